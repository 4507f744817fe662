package dev.jetting.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.jetting.core.mixture.MixtureModel;
import dev.jetting.units.JetBore;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes into each library's jar. */
class LicenceTest {

  @ParameterizedTest
  @ValueSource(classes = {JetBore.class, MixtureModel.class, Report.class})
  void module_bringsLicenceAndNotice(Class<?> type) throws IOException, URISyntaxException {
    Path place = Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    if (Files.isDirectory(place)) {
      bringsLicenceAndNotice(place);
      return;
    }
    try (FileSystem jar = FileSystems.newFileSystem(place)) {
      bringsLicenceAndNotice(jar.getPath("/"));
    }
  }

  private static void bringsLicenceAndNotice(Path root) throws IOException {
    Path metaInf = root.resolve("META-INF");
    assertThat(Files.readString(metaInf.resolve("LICENSE"))).contains("Apache License");
    assertThat(Files.readString(metaInf.resolve("NOTICE"))).contains("META-INF/LICENSE");
  }
}
