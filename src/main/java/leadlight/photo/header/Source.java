package leadlight.photo.header;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import leadlight.model.UserError;
import leadlight.vision.decode.EncodedPicture;

/** An open picture file: pieces of it by offset, the whole of it once its header is trusted. */
public final class Source implements Closeable {

  /** Bytes to read at once when a file is gone through. */
  static final int CHUNK = 1 << 16;

  private final Path file;
  private final FileChannel channel;
  private final long size;

  private Source(Path file, FileChannel channel, long size) {
    this.file = file;
    this.channel = channel;
    this.size = size;
  }

  /**
   * Opens a file that can be a picture.
   *
   * @throws UserError if it is missing, no file, empty or not readable
   */
  public static Source open(Path file) {
    if (Files.isDirectory(file)) {
      throw refused(file, "is a folder; name a picture file in it");
    }
    if (!Files.exists(file)) {
      throw refused(file, "does not exist; check the path");
    }
    if (!Files.isRegularFile(file)) {
      throw refused(file, "is a device or pipe, not a file; save the picture to a file");
    }
    if (!Files.isReadable(file)) {
      throw refused(file, "may not be read; ask for permission to read it");
    }
    try {
      FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
      return notEmpty(new Source(file, channel, channel.size()));
    } catch (IOException e) {
      throw refused(file, "cannot be opened; check the disk and the permissions");
    }
  }

  private static Source notEmpty(Source source) throws IOException {
    if (source.size == 0) {
      source.close();
      throw source.refused("is empty, 0 bytes; copy the picture again");
    }
    return source;
  }

  public Path file() {
    return file;
  }

  public long size() {
    return size;
  }

  /** The line for this file: its path, then {@code whatAndTodo}. */
  public UserError refused(String whatAndTodo) {
    return refused(file, whatAndTodo);
  }

  UserError cutShort() {
    return refused("is cut short; copy it again from the camera or card");
  }

  public UserError damaged() {
    return refused("is damaged; copy it again from the camera or card");
  }

  /** Damaged in a way that has words. */
  public UserError damaged(String how) {
    return refused("is damaged: " + how + "; copy it again from the camera or card");
  }

  private static UserError refused(Path file, String whatAndTodo) {
    return new UserError(file.toString().replaceAll("\\p{Cntrl}", "?") + " " + whatAndTodo);
  }

  /**
   * Bytes, big-endian until told otherwise.
   *
   * @throws UserError if the file ends before them
   */
  ByteBuffer at(long offset, int length) {
    ByteBuffer piece = upTo(offset, length);
    if (piece.remaining() < length) {
      throw cutShort();
    }
    return piece;
  }

  /** As {@link #at}, but fewer bytes where the file ends. */
  ByteBuffer upTo(long offset, int length) {
    ByteBuffer piece = ByteBuffer.allocate((int) Math.max(0, Math.min(length, size - offset)));
    fill(piece, offset);
    return piece.flip();
  }

  /** Fills an array from an offset on, as far as the file goes; returns the number of bytes. */
  public int read(long offset, byte[] into) {
    int length = (int) Math.max(0, Math.min(into.length, size - offset));
    fill(ByteBuffer.wrap(into, 0, length), offset);
    return length;
  }

  private void fill(ByteBuffer piece, long offset) {
    try {
      long at = offset;
      while (piece.hasRemaining()) {
        int count = channel.read(piece, at);
        if (count < 0) {
          throw changed();
        }
        at += count;
      }
    } catch (IOException e) {
      throw refused("cannot be read to its end; copy it again from the camera or card");
    }
  }

  /** The whole file, fed to {@code hash} on the way; to be closed by the caller. */
  public EncodedPicture load(MessageDigest hash) {
    EncodedPicture picture = new EncodedPicture(Math.toIntExact(size));
    try {
      byte[] chunk = new byte[CHUNK];
      for (int offset = 0; offset < size; offset += CHUNK) {
        int length = read(offset, chunk);
        hash.update(chunk, 0, length);
        picture.put(offset, chunk, length);
      }
      return picture;
    } catch (UserError e) {
      picture.close();
      throw e;
    }
  }

  private UserError changed() {
    return refused("became shorter while it was read; wait until it is copied, then try again");
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
