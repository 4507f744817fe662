"use strict";
// Draws the charts of a bench, and asks for the next bench when a part is changed.
(() => {
  let plots = [];
  let charts = null;
  let other = null;
  let day = "today";
  let at = -1;
  let shown = null;
  let answering = false;
  let quietUntil = 0;

  const el = (id) => document.getElementById(id);
  const colour = (name) =>
    getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();

  const eighths = () => [charts.words.closed, "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8",
    charts.words.full];
  const number = (value, decimals) => value.toFixed(decimals).replace(".", charts.words.point);

  function axes(format) {
    const line = { stroke: colour("ink"), grid: { stroke: colour("grid"), width: 1 },
      ticks: { stroke: colour("grid") }, font: "15px system-ui, sans-serif" };
    return [
      { ...line, size: 34, splits: () => eighths().map((_, i) => i * 12.5),
        values: (u) => eighths().map((text, i) =>
          u.width < 480 && i % 2 === 1 ? "" : text) },
      { ...line, size: 66, values: (_, values) => values.map(format) },
    ];
  }

  // Shades the finding that is pointed at, and numbers each finding at the top of its range.
  function places(u) {
    const ctx = u.ctx;
    ctx.save();
    const { top, height } = u.bbox;
    const px = (percent) => u.valToPos(percent, "x", true);
    document.querySelectorAll("#bench .found").forEach((found) => {
      const from = px(Number(found.dataset.from));
      const to = Math.max(from + 6, px(Number(found.dataset.to)));
      if (found.dataset.number === shown) {
        ctx.fillStyle = colour("pointed");
        ctx.fillRect(from, top, to - from, height);
      }
    });
    ctx.restore();
  }

  function base(id, height, series, data, range, format, extra) {
    const host = el(id);
    host.textContent = "";
    const { drawn = [], ...options } = extra;
    const plot = new uPlot({
      width: host.clientWidth, height,
      legend: { show: false },
      cursor: { sync: { key: "throttle" }, drag: { x: false, y: false }, points: { show: false },
        x: true, y: false },
      scales: { x: { time: false, range: [0, 100] }, y: { range } },
      axes: axes(format), series: [{}, ...series], ...options,
      hooks: { drawClear: [places], draw: drawn, setCursor: [(u) => {
        const hovered = u.cursor.idx !== null && u.cursor.idx !== undefined;
        if (charts && hovered && performance.now() > quietUntil) { look(u.cursor.idx, false); }
      }] },
    }, data, host);
    plots.push(plot);
  }

  const solid = (name, width) => ({ stroke: colour(name), width, points: { show: false } });
  const dashed = (name, width, dash) => ({ ...solid(name, width), dash });

  function draw() {
    if (el("beside")) {
      beside();
      return;
    }
    if (!charts) { return; }
    plots.forEach((plot) => plot.destroy());
    plots = [];
    const columns = charts.days[day];
    const high = window.innerWidth < 700 ? 260 : 360;
    base("plot-lambda", high, [
      solid("band-edge", 1), solid("band-edge", 1),
      dashed("c-limit", 3, [3, 3]), dashed("c-need", 2, [12, 5]),
      dashed("c-fitted", 2, [2, 6]), solid("c-lambda", 4),
    ], [charts.throttle, columns.rich, columns.lean, columns.limit, columns.needed,
      columns.fitted, columns.lambda],
    (_, low, top) => [Math.max(0.4, Math.floor(low * 10) / 10),
      Math.min(1.7, Math.ceil(top * 10) / 10)],
    (value) => number(value, 1), { bands: [{ series: [2, 1], fill: colour("c-band"), dir: -1 }] });
    base("plot-risk", 220, [
      dashed("c-limit", 3, [3, 3]), dashed("c-fitted", 2, [2, 6]), dashed("c-risk", 2, [9, 4]),
      solid("c-risk", 4),
    ], [charts.throttle, charts.throttle.map(() => charts.accepted), columns.fittedRisk,
      columns.climbRisk, columns.risk],
    () => [0, 100], (value) => value + " %", {});
    stacked(columns);
    el("throttle").max = charts.throttle.length - 1;
  }

  function stacked(columns) {
    const names = Object.keys(columns.shares);
    const keys = ["c-pilot", "c-cutaway", "c-needle", "c-main"];
    const sums = [];
    names.forEach((name, i) => {
      sums.push(columns.shares[name].map((share, j) => share + (i ? sums[i - 1][j] : 0)));
    });
    // The highest first, so that each lower one is painted over it.
    const order = names.map((_, i) => names.length - 1 - i);
    base("plot-shares", 220,
      order.map((i) => ({ stroke: colour("card"), width: 1.5, fill: colour(keys[i]),
        points: { show: false } })),
      [charts.throttle, ...order.map((i) => sums[i])], () => [0, 100],
      (value) => value + " %", { drawn: [(u) => name(u, names, columns.shares, sums)] });
  }

  // Writes each circuit's name where its share is largest, because no colour alone may say it.
  function name(u, names, shares, sums) {
    const ctx = u.ctx;
    ctx.save();
    ctx.font = "700 " + 15 * devicePixelRatio + "px system-ui, sans-serif";
    ctx.textBaseline = "middle";
    ctx.lineJoin = "round";
    ctx.lineWidth = 5 * devicePixelRatio;
    ctx.strokeStyle = colour("card");
    ctx.fillStyle = colour("ink");
    ctx.textAlign = "center";
    names.forEach((text, i) => {
      const half = ctx.measureText(text).width / 2 + 8;
      const left = u.bbox.left + half;
      const right = u.bbox.left + u.bbox.width - half;
      const share = shares[text].map((value, j) => {
        const x = u.valToPos(charts.throttle[j], "x", true);
        return x < left || x > right ? 0 : value;
      });
      const most = share.indexOf(Math.max(...share));
      if (share[most] >= 10) {
        const x = u.valToPos(charts.throttle[most], "x", true);
        const y = u.valToPos(sums[i][most] - share[most] / 2, "y", true);
        ctx.strokeText(text, x, y);
        ctx.fillText(text, x, y);
      }
    });
    ctx.restore();
  }

  const two = (value) => number(value, 2);
  const filled = (words, values) => words.replace(/\{(\w+)\}/g, (_, name) => values[name]);
  const band = (columns, index) => filled(charts.words.band, {
    lambda: two(columns.lambda[index]), rich: two(columns.rich[index]),
    lean: two(columns.lean[index]) });

  function ofOne(columns, index) {
    return [
      ["λ", band(columns, index)],
      [charts.words.limit, two(columns.limit[index])],
      [charts.words.wanted, two(columns.needed[index])],
      [charts.words.risk, columns.said[index]],
      [charts.words.climb, columns.climbSaid[index]],
      [charts.words.metered, Object.entries(columns.shares).map(([name, share]) =>
        name + " " + Math.round(share[index]) + " %").join(", ")],
    ];
  }

  function ofBoth(index) {
    return [[el("beside").dataset.left, charts.days.today],
      [el("beside").dataset.right, other.days.today]].map(([name, columns]) =>
      [name, filled(charts.words.beside, { band: band(columns, index),
        limit: two(columns.limit[index]), risk: columns.said[index] })]);
  }

  function look(index, move) {
    if (index === at && !move) { return; }
    at = index;
    el("throttle").value = index;
    const where = el("beside") ? charts.where[index] : charts.whereAndSpeed[index];
    const rows = el("beside") ? ofBoth(index) : ofOne(charts.days[day], index);
    el("where").textContent = where;
    el("numbers").replaceChildren(...rows.flatMap(([name, value]) => {
      const dt = document.createElement("dt");
      const dd = document.createElement("dd");
      dt.textContent = name;
      dd.textContent = value;
      return [dt, dd];
    }));
    el("throttle").setAttribute("aria-valuetext",
      where + ", " + rows.map((row) => row.join(" ")).join(", "));
    if (move) {
      plots.forEach((plot) => plot.setCursor({
        left: plot.valToPos(charts.throttle[index], "x"), top: 10 }, false));
    }
  }

  function point(found) {
    shown = found.dataset.number;
    const from = Number(found.dataset.from);
    const to = Number(found.dataset.to);
    const { risk: level, climbRisk } = charts.days[day];
    const risk = level.map((value, i) => Math.max(value, climbRisk[i]));
    let best = -1;
    charts.throttle.forEach((percent, i) => {
      if (percent >= from && percent <= to && (best < 0 || risk[i] > risk[best])) { best = i; }
    });
    draw();
    if (best >= 0) { look(best, true); }
    // The page moves under a resting mouse, which is no wish to look elsewhere.
    quietUntil = performance.now() + 700;
    el("plot-lambda").scrollIntoView({ block: "center", behavior: "auto" });
  }

  function begin() {
    charts = JSON.parse(el("bench").dataset.charts);
    document.querySelectorAll("#bench .point").forEach((button) => { button.hidden = false; });
    const chosen = document.querySelector("input[name=day][value=" + day + "]");
    if (chosen) { chosen.checked = true; }
    draw();
    if (at >= 0) { look(at, true); }
    cells();
  }

  // One cell of the map takes part in the order of the Tab key; arrows go on from it.
  function cells() {
    const table = document.querySelector(".map");
    table.setAttribute("role", "grid");
    const grid = [...table.tBodies[0].rows].map((row) => [...row.querySelectorAll("td")]);
    const show = (cell) => { el("map-numbers").textContent = cell.dataset.about; };
    grid.flat().forEach((cell) => {
      cell.tabIndex = -1;
      cell.addEventListener("mouseenter", () => show(cell));
    });
    grid[0][0].tabIndex = 0;
    table.addEventListener("focusin", (event) => {
      const cell = event.target.closest("td");
      if (cell) {
        grid.flat().forEach((one) => { one.tabIndex = one === cell ? 0 : -1; });
        show(cell);
      }
    });
    const steps = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };
    table.addEventListener("keydown", (event) => {
      const i = grid.findIndex((row) => row.includes(event.target));
      const towards = steps[event.key];
      if (i < 0 || !towards) { return; }
      event.preventDefault();
      grid[i + towards[0]]?.[grid[i].indexOf(event.target) + towards[1]]?.focus();
    });
  }

  async function step(link) {
    if (answering) { return; }
    answering = true;
    const key = link.dataset.key;
    try {
      const answer = await fetch(link.href, { headers: { "X-Part": "bench" } });
      if (!answer.ok) { throw new Error(String(answer.status)); }
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      el("bench").replaceWith(page.getElementById("bench"));
      history.replaceState(null, "", link.href);
      begin();
      const again = document.querySelector('[data-key="' + key + '"]');
      (again || document.querySelector(".rail .step[href]")).focus({ preventScroll: true });
    } catch (refused) {
      window.location.assign(link.href);
    } finally {
      answering = false;
    }
  }

  document.addEventListener("click", (event) => {
    const link = event.target.closest("a.step");
    if (link && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      step(link);
    }
    const button = event.target.closest("button.point");
    if (button) { point(button.closest(".found")); }
  });
  document.addEventListener("input", (event) => {
    if (event.target.id === "throttle") { look(Number(event.target.value), true); }
  });
  document.addEventListener("change", (event) => {
    if (event.target.name === "day") {
      day = event.target.value;
      draw();
      if (at >= 0) { look(at, true); }
    }
  });
  window.matchMedia("(prefers-color-scheme: dark)").addEventListener("change", draw);
  let width = window.innerWidth;
  window.addEventListener("resize", () => {
    if (window.innerWidth !== width) {
      width = window.innerWidth;
      draw();
    }
  });
  // Two machines in one chart, at the openings of the first.
  function beside() {
    plots.forEach((plot) => plot.destroy());
    plots = [];
    [charts, other] = JSON.parse(el("beside").dataset.charts);
    el("throttle").max = charts.throttle.length - 1;
    const left = charts.days.today;
    const right = other.days.today;
    base("plot-beside", 360, [
      solid("band-edge", 1), solid("band-edge", 1), dashed("c-limit", 2, [3, 3]),
      dashed("c-limit", 2, [3, 3]), solid("c-lambda", 4), dashed("c-need", 4, [12, 5]),
    ], [charts.throttle, left.rich, left.lean, left.limit, right.limit, left.lambda, right.lambda],
    (_, low, top) => [Math.max(0.4, Math.floor(low * 10) / 10),
      Math.min(1.7, Math.ceil(top * 10) / 10)],
    (value) => number(value, 1), { bands: [{ series: [2, 1], fill: colour("c-band"), dir: -1 }] });
  }

  if (el("bench")) { begin(); }
  if (el("beside")) { beside(); }
})();
