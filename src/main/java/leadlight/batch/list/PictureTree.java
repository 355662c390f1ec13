package leadlight.batch.list;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import leadlight.photo.PhotoFiles;

/** The pictures below a folder. Links are followed, but for those that lead back above them. */
final class PictureTree extends SimpleFileVisitor<Path> {

  private final List<Path> pictures = new ArrayList<>();

  private PictureTree() {}

  /** Sorted; {@code deepest} folders down at most. */
  static List<Path> below(Path folder, int deepest) throws IOException {
    PictureTree tree = new PictureTree();
    Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), deepest, tree);
    return tree.pictures.stream().sorted().toList();
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    if (!attributes.isDirectory() && PhotoFiles.isPicture(file)) {
      pictures.add(file);
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException trouble) throws IOException {
    if (trouble instanceof FileSystemLoopException) {
      return FileVisitResult.CONTINUE;
    }
    throw trouble;
  }
}
