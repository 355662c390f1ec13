package leadlight.vision.load;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.jar.JarEntry;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;

/** A native library as it lies in a jar, and its unpacked copy. */
final class PackedLibrary {

  private static final int PIECE = 1 << 18;

  private final URL packed;
  private final String name;
  private final long size;
  private final long crc;

  /** Reads size and checksum from the jar's directory; unpacks nothing. */
  PackedLibrary(URL packed) throws IOException {
    this.packed = packed;
    JarEntry entry = ((JarURLConnection) packed.openConnection()).getJarEntry();
    this.size = entry.getSize();
    this.crc = entry.getCrc();
    this.name = nameByContent(entry.getName().replaceFirst(".*/", ""), crc);
  }

  private static String nameByContent(String name, long crc) {
    int dot = name.lastIndexOf('.');
    return "%s-%08x%s".formatted(name.substring(0, dot), crc, name.substring(dot));
  }

  /**
   * The unpacked copy in the folder, made if it is not there. Its name holds the content's
   * checksum, so another version never meets it. One process unpacks while others wait; it writes
   * aside, compares the checksum and renames. Each start compares size and checksum again, for
   * 20-27 ms (measured on two cores): a copy of wrong bytes would end the process for ever.
   *
   * @throws IOException if the folder cannot be written or the jar is damaged
   */
  Path unpackedIn(Path folder) throws IOException {
    Path target = folder.resolve(name);
    if (!isWhole(target)) {
      Files.createDirectories(folder);
      try (FileChannel lock =
          FileChannel.open(
              folder.resolve(name + ".lock"),
              StandardOpenOption.CREATE,
              StandardOpenOption.WRITE)) {
        lock.lock();
        if (!isWhole(target)) {
          unpack(folder.resolve(name + ".part"), target);
        }
      }
    }
    return target;
  }

  private boolean isWhole(Path file) throws IOException {
    if (!Files.isRegularFile(file) || Files.size(file) != size) {
      return false;
    }
    // Piece by piece: mapped as a whole it would stay resident until the collector comes by.
    CRC32 sum = new CRC32();
    ByteBuffer piece = ByteBuffer.allocateDirect(PIECE);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      while (channel.read(piece) >= 0) {
        sum.update(piece.flip());
        piece.clear();
      }
    }
    return sum.getValue() == crc;
  }

  private void unpack(Path aside, Path target) throws IOException {
    Files.deleteIfExists(aside);
    try {
      if (copyTo(aside) != crc) {
        throw new IOException(packed + " is damaged");
      }
      Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  /** Copies and gives the checksum of what was copied. */
  private long copyTo(Path aside) throws IOException {
    CheckedInputStream in = new CheckedInputStream(packed.openStream(), new CRC32());
    try (in;
        FileChannel out =
            FileChannel.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      in.transferTo(Channels.newOutputStream(out));
      out.force(true);
    }
    return in.getChecksum().getValue();
  }
}
