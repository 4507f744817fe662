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
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
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

  /** Each module has them from the parent, unless it lists resources of its own. */
  @Test
  void poms_thatListResources_listLicenceAndNotice() throws IOException {
    List<Path> poms = RepositoryFiles.matching(Pattern.compile(".*[/\\\\]pom\\.xml"));
    int found = 0;
    for (Path pom : poms) {
      String text = Files.readString(pom);
      if (text.contains("<resources>")) {
        found++;
        assertThat(text)
            .as(pom.toString())
            .contains("<targetPath>META-INF</targetPath>")
            .contains("<include>LICENSE</include>")
            .contains("<include>NOTICE</include>");
      }
    }
    assertThat(found).isGreaterThan(1);
  }

  private static void bringsLicenceAndNotice(Path root) throws IOException {
    Path metaInf = root.resolve("META-INF");
    assertThat(Files.readString(metaInf.resolve("LICENSE"))).contains("Apache License");
    assertThat(Files.readString(metaInf.resolve("NOTICE"))).contains("META-INF/LICENSE");
  }
}
