package dev.jetting.examples.shopcounter.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/** The pages; whatever a visitor typed is escaped where it is shown. */
final class Templates {

  private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

  void show(Context request, String name, Map<String, Object> values) {
    Page page = Languages.page(request);
    Map<String, Object> all = new HashMap<>(values);
    all.put("page", page);
    StringOutput html = new StringOutput(16_384);
    engine.render(name, all, html);
    request.header("Content-Language", page.tag());
    request.header("Vary", "Accept-Language, Cookie");
    request.html(html.toString());
  }
}
