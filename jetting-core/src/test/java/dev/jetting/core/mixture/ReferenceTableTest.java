package dev.jetting.core.mixture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.jetting.core.ReferenceSetup;
import dev.jetting.units.ThrottleOpening;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** A setting whose table holds every column to the last digit that is printed. */
class ReferenceTableTest {

  private static final String HEAD =
      "throttle,lift mm,rpm,r,nozzle suction Pa,well Pa,air g/s,main g/s,pilot g/s,lambda,source\n";

  private static final Path TABLE =
      Path.of("src/test/resources/dev/jetting/core/mixture/reference.csv");

  /** The table of MODEL.md, which the second implementation makes. */
  @ParameterizedTest
  @CsvFileSource(resources = "reference.csv", numLinesToSkip = 1)
  void referenceSetting_givesTheTableOfTheSecondImplementation(ArgumentsAccessor line) {
    same(MixtureModel.of(ReferenceSetup.setup()), line);
  }

  /** A run with {@code -Dgolden.update=true} writes it anew. */
  @Test
  void referenceTable_isWhatTheSecondImplementationGives() throws IOException {
    Setup setup = ReferenceSetup.setup();
    StringBuilder table = new StringBuilder(HEAD);
    for (double theta : List.of(0.0, 0.0625, 0.125, 0.25, 0.5, 0.75, 1.0)) {
      double rpm = setup.engine().loadLine().at(ThrottleOpening.ofShare(theta)).rpm();
      table.append(line(setup, theta, rpm)).append('\n');
    }
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(TABLE, table, UTF_8);
    }
    assertThat(Files.readString(TABLE, UTF_8)).isEqualTo(table.toString());
  }

  private static String line(Setup setup, double theta, double rpm) {
    SecondImplementation second = new SecondImplementation(setup, theta, rpm);
    double idle = setup.setting().idleLift().millimetres();
    double bore = setup.setting().carburettor().bore().millimetres();
    return String.join(
        ",",
        new BigDecimal(theta).toPlainString(),
        fixed(idle + theta * (bore - idle), 4),
        fixed(rpm, 1),
        fixed(1 - second.drop, 6),
        fixed(second.suction, 2),
        fixed(second.well, 2),
        fixed(second.air * 1000, 6),
        fixed(second.main * 1000, 6),
        fixed(second.pilot * 1000, 6),
        fixed(second.lambda, 5),
        "\"the second implementation in the tests, solved by bisection\"");
  }

  private static String fixed(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static void same(MixtureModel model, ArgumentsAccessor line) {
    MixturePoint point = model.at(ThrottleOpening.ofShare(line.getDouble(0)));
    String source = line.getString(10);
    double ratio = line.getDouble(3);

    // Half a unit of the last printed digit; at least 1e-4 of the value in every column.
    close(point.lift().millimetres(), line.getDouble(1), 0.5001e-4, source);
    close(point.speed().rpm(), line.getDouble(2), 0.05, source);
    close(point.depression().pascals(), 101_325 * (1 - ratio), 101_325 * 0.5e-6, source);
    close(point.needleJetSuction().pascals(), line.getDouble(4), 0.005, source);
    close(point.wellDepression().pascals(), line.getDouble(5), 0.005, source);
    close(point.airFlow().gramsPerSecond(), line.getDouble(6), 0.5e-6, source);
    close(point.mainFuelFlow().gramsPerSecond(), line.getDouble(7), 0.5e-6, source);
    close(point.pilotFuelFlow().gramsPerSecond(), line.getDouble(8), 0.5e-6, source);
    close(point.lambda().value(), line.getDouble(9), 0.5e-5, source);
  }

  private static void close(double actual, double expected, double by, String source) {
    assertThat(actual).as(source).isCloseTo(expected, within(by));
  }
}
