package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.JetBore;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes into each library's jar. */
class LicenceTest {

  @ParameterizedTest
  @ValueSource(classes = {JetBore.class, MixtureModel.class, Report.class})
  void module_bringsLicenceAndNotice(Class<?> type) throws IOException, URISyntaxException {
    URI place = type.getProtectionDomain().getCodeSource().getLocation().toURI();
    Path metaInf = Path.of(place).resolve("META-INF");
    assertThat(Files.readString(metaInf.resolve("LICENSE"))).contains("Apache License");
    assertThat(Files.readString(metaInf.resolve("NOTICE"))).contains("META-INF/LICENSE");
  }
}
