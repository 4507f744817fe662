package dev.jetting.rules.json;

import static net.jqwik.api.Combinators.combine;

import dev.jetting.rules.Outcome.Status;
import dev.jetting.rules.Severity;
import dev.jetting.rules.ThrottleBand;
import dev.jetting.rules.json.Threshold.Against;
import dev.jetting.rules.json.Threshold.OtherMeasure;
import dev.jetting.rules.json.Threshold.Stated;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;

/** Rule files over the whole table of measures. */
final class RuleFileArbitraries {

  /** A text of each dimension. */
  private static final Map<String, List<String>> TEXTS =
      Map.of(
          "mm", List.of("1.3 mm", "2.5mm"),
          "mm²", List.of("600 mm²", "1 mm2"),
          "turns", List.of("1 1/2 turns", "0.75"),
          "cm³", List.of("200 cm³", "125 cc"),
          "rpm", List.of("7000 rpm"),
          "Pa", List.of("900 hPa", "20000 Pa"),
          "K", List.of("20 °C", "280 K", "50 °F"),
          "kg/m³", List.of("1.2 kg/m³", "0.74 g/L"),
          "mPa·s", List.of("0.6 mPa·s", "5e-4 Pa·s"),
          "g/s", List.of("12.5 g/s", "40 kg/h"));

  private RuleFileArbitraries() {}

  static Arbitrary<RuleFile> files() {
    return combine(texts(), texts(), rules().list().ofMinSize(1).ofMaxSize(4))
        .as(
            (name, version, rules) ->
                RuleFileReader.read(
                    new RuleFileForm(
                        RuleFileForm.FORMAT, RuleFileForm.VERSION, name, version, ided(rules))));
  }

  private static List<RuleForm> ided(List<RuleForm> rules) {
    return IntStream.range(0, rules.size())
        .mapToObj(
            i -> {
              RuleForm r = rules.get(i);
              return new RuleForm(
                  "rule-" + i,
                  r.formerIds().map(ids -> List.of("former-" + i)),
                  r.title(),
                  r.rationale(),
                  r.severity(),
                  r.tags(),
                  r.link(),
                  r.band(),
                  r.when(),
                  r.require(),
                  r.message(),
                  r.remedy(),
                  r.subject(),
                  r.examples(),
                  r.texts());
            })
        .toList();
  }

  private static Arbitrary<RuleForm> rules() {
    return combine(
            texts(),
            Arbitraries.of(Severity.class),
            conditions(2).optional(),
            conditions(3),
            Arbitraries.of("{measured} is beyond {limit}", "{throttle}: {measure}", "plain"),
            Arbitraries.of("setting.needleJet", "engine").optional(),
            examples().list().ofMinSize(1).ofMaxSize(3).optional())
        .as(
            (text, severity, when, require, message, subject, examples) ->
                new RuleForm(
                    "id",
                    subject.map(List::of),
                    text,
                    text,
                    severity,
                    subject.map(part -> List.of("kit", "needle-2")),
                    subject.map(part -> "pages/rule.md"),
                    Optional.of(ThrottleBand.eighths(1, 7)),
                    when,
                    require,
                    message,
                    text,
                    subject,
                    examples,
                    subject.map(
                        any -> Map.of("de", new RuleTextsForm(text, text, message, text)))));
  }

  private static Arbitrary<ExampleForm> examples() {
    Arbitrary<JsonText> values =
        Arbitraries.of("\"1.30 mm\"", "1.10", "-5E+3", "true", "[1,\"λ\"]", "{\"a\":{}}")
            .map(JsonText::new);
    Arbitrary<String> pointers = Arbitraries.of("/setting/mainJet", "/setting", "/a~1b/0", "/ü");
    return combine(
            texts(),
            Arbitraries.maps(pointers, values).ofMinSize(1).ofMaxSize(3).optional(),
            Arbitraries.of(Status.PASSED, Status.FAILED, Status.NOT_EVALUATED))
        .as(
            (on, edits, expect) ->
                new ExampleForm(on, edits, expect, Optional.empty(), Optional.empty()));
  }

  private static Arbitrary<ConditionForm> conditions(int deep) {
    Arbitrary<ConditionForm> leaf =
        Arbitraries.of(List.copyOf(MeasureDefinitions.all())).flatMap(g -> on(g));
    if (deep == 0) {
      return leaf;
    }
    Arbitrary<ConditionForm> inner = conditions(deep - 1);
    return Arbitraries.frequencyOf(
        Tuple.of(3, leaf),
        Tuple.of(
            1,
            inner
                .list()
                .ofMinSize(1)
                .ofMaxSize(3)
                .map(all -> of(Optional.of(all), Optional.empty(), Optional.empty()))),
        Tuple.of(
            1,
            inner
                .list()
                .ofMinSize(1)
                .ofMaxSize(3)
                .map(any -> of(Optional.empty(), Optional.of(any), Optional.empty()))),
        Tuple.of(1, inner.map(not -> of(Optional.empty(), Optional.empty(), Optional.of(not)))));
  }

  static ConditionForm of(
      Optional<List<ConditionForm>> all,
      Optional<List<ConditionForm>> any,
      Optional<ConditionForm> not) {
    return new ConditionForm(
        all,
        any,
        not,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Arbitrary<ConditionForm> on(MeasureDefinition definition) {
    return definition instanceof MeasureDefinition.Numeric number
        ? onNumber(number)
        : onText(definition);
  }

  private static Arbitrary<ConditionForm> onText(MeasureDefinition definition) {
    return combine(texts().list().ofMinSize(1).ofMaxSize(3), Arbitraries.of(true, false))
        .as(
            (texts, one) ->
                new ConditionForm(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(definition.name()),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    one ? Optional.of(texts.get(0)) : Optional.empty(),
                    one ? Optional.empty() : Optional.of(texts)));
  }

  private static Arbitrary<ConditionForm> onNumber(MeasureDefinition.Numeric definition) {
    return combine(
            takes(definition),
            withins(definition),
            thresholds(definition),
            thresholds(definition).optional(),
            Arbitraries.of(true, false))
        .as(
            (take, within, one, other, most) ->
                new ConditionForm(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(definition.name()),
                    take,
                    within,
                    most ? Optional.of(one) : other,
                    most ? other : Optional.of(one),
                    Optional.empty(),
                    Optional.empty()));
  }

  private static Arbitrary<Optional<Take>> takes(MeasureDefinition.Numeric definition) {
    return definition instanceof MeasureDefinition.Swept
        ? Arbitraries.of(Take.class).map(Optional::of)
        : Arbitraries.just(Optional.empty());
  }

  private static Arbitrary<Optional<ThrottleBand>> withins(MeasureDefinition.Numeric definition) {
    return definition instanceof MeasureDefinition.Swept
        ? Arbitraries.of(ThrottleBand.eighths(1, 2), ThrottleBand.eighths(4, 7)).optional()
        : Arbitraries.just(Optional.empty());
  }

  private static Arbitrary<Threshold> thresholds(MeasureDefinition.Numeric definition) {
    List<String> texts =
        TEXTS.getOrDefault(definition.dimension().unit(), List.of("0.9", "1", "0.05"));
    List<MeasureDefinition.Numeric> alike =
        MeasureDefinitions.all().stream()
            .filter(g -> g instanceof MeasureDefinition.Numeric)
            .map(g -> (MeasureDefinition.Numeric) g)
            .filter(g -> definition.dimension().differsFrom(g.dimension()).isEmpty())
            .toList();
    Arbitrary<Threshold> stated =
        definition.dimension() == Dimension.OIL
            ? Arbitraries.of("50:1", "2 %", "no oil").map(Stated::new)
            : Arbitraries.of(texts).map(Stated::new);
    Arbitrary<Threshold> against =
        Arbitraries.of(alike)
            .flatMap(
                other ->
                    combine(
                            takes(other),
                            withins(other),
                            Arbitraries.of(0.5, 1.1, 1000.0).optional())
                        .as(
                            (take, within, times) ->
                                new Against(new OtherMeasure(other.name(), take, within, times))));
    return Arbitraries.oneOf(stated, against);
  }

  private static Arbitrary<String> texts() {
    return Arbitraries.strings()
        .alpha()
        .numeric()
        .withChars(" \"\\/[]:,'…λ³·é")
        .ofMinLength(1)
        .ofMaxLength(24)
        .filter(text -> !text.isBlank());
  }
}
