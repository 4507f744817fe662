package dev.jetting.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The files of the repository, without what a build makes and without hidden folders. */
final class RepositoryFiles {

  static final Path ROOT = Path.of("..");

  private RepositoryFiles() {}

  /** Every file of all modules whose path matches, in a fixed order. */
  static List<Path> matching(Pattern path) {
    return matching(path, directory -> true);
  }

  /** The same without the sources and resources of tests. */
  static List<Path> matchingOutsideTests(Pattern path) {
    return matching(path, directory -> !directory.endsWith("src/test"));
  }

  private static List<Path> matching(Pattern path, Predicate<Path> entered) {
    List<Path> files = new ArrayList<>();
    var visitor =
        new SimpleFileVisitor<Path>() {
          @Override
          public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
            String name = directory.getFileName().toString();
            boolean hidden = name.startsWith(".") && !directory.equals(ROOT);
            return hidden || name.equals("target") || !entered.test(directory)
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (path.matcher(file.toString()).matches()) {
              files.add(file);
            }
            return FileVisitResult.CONTINUE;
          }
        };
    try {
      Files.walkFileTree(ROOT, visitor);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    files.sort(Comparator.comparing(Path::toString));
    return files;
  }
}
