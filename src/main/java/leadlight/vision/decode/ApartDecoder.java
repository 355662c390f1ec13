package leadlight.vision.decode;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import leadlight.vision.decode.Codec.Decoded;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.CvType;
import org.opencv.core.Mat;

/**
 * Decodes in a process apart ({@link DecodeProcess}), bounded in time and memory: a decoder that
 * crashes, hangs or swells costs the one picture. A process is kept for the next picture, as to
 * start one takes longer than most pictures; it ends with this one. One that was lost is not used
 * again. Safe for threads: each that decodes at the same time has a process of its own.
 */
public final class ApartDecoder {

  private static final Deque<Worker> IDLE = new ConcurrentLinkedDeque<>();

  private final Duration time;
  private final int megabytes;

  /** In full size, in half size, or of 16 bits. */
  public enum Way {
    FULL,
    HALF,
    DEEP;

    /** Decodes in this process. */
    public Optional<Decoded> here(EncodedPicture picture) {
      return this == DEEP ? Codec.decode16(picture) : Codec.decode(picture, this == HALF);
    }
  }

  /** Decoding was broken off. */
  public static final class Lost extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final boolean late;

    Lost(boolean late, Throwable cause) {
      super(cause);
      this.late = late;
    }

    /** Whether the time was over; else the process ended by itself. */
    public boolean late() {
      return late;
    }
  }

  /** A decoder with bounds a picture. */
  public ApartDecoder(Duration time, int megabytes) {
    this.time = time;
    this.megabytes = megabytes;
  }

  /**
   * As {@link Codec} does it here.
   *
   * @throws Lost if the process was lost over the picture
   * @throws UncheckedIOException if none can be started
   */
  public Optional<Decoded> decode(EncodedPicture picture, Way way) {
    Optional<Worker> kept = Optional.ofNullable(IDLE.poll()).filter(Worker::lives);
    if (kept.isPresent()) {
      try {
        return decode(kept.get(), picture, way);
      } catch (Lost e) {
        if (e.late()) {
          throw e;
        }
        // An earlier picture may have hurt it: this one is judged by a fresh process.
      }
    }
    return decode(start(), picture, way);
  }

  private Optional<Decoded> decode(Worker worker, EncodedPicture picture, Way way) {
    AtomicBoolean late = new AtomicBoolean();
    CompletableFuture<Void> watch =
        CompletableFuture.runAsync(
            () -> {
              late.set(true);
              worker.process.destroyForcibly();
            },
            CompletableFuture.delayedExecutor(
                time.toMillis(), TimeUnit.MILLISECONDS, Runnable::run));
    try {
      Optional<Decoded> decoded = worker.decode(picture, way);
      if (watch.cancel(false) && !late.get()) {
        IDLE.push(worker);
      }
      return decoded;
    } catch (IOException e) {
      watch.cancel(false);
      worker.process.destroyForcibly();
      throw new Lost(late.get(), e);
    }
  }

  /** Ends the processes that are kept for the next picture. */
  static void forgetIdle() {
    for (Worker worker = IDLE.poll(); worker != null; worker = IDLE.poll()) {
      worker.process.destroy();
    }
  }

  /** The shell sets the bound on memory, where there is one; elsewhere only time is bounded. */
  private Worker start() {
    List<String> java =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx32m",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-Xlog:disable",
            "-XX:+DisplayVMOutputToStderr",
            "-XX:-CreateCoredumpOnCrash",
            "-XX:ErrorFile=/dev/null",
            NativeLibrary.option(),
            "-cp",
            System.getProperty("java.class.path"),
            DecodeProcess.class.getName());
    String shell = "ulimit -d " + megabytes * 1000L + " 2>/dev/null; exec \"$0\" \"$@\"";
    try {
      return new Worker(start(java, shell));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Process start(List<String> java, String shell) throws IOException {
    ProcessBuilder process = new ProcessBuilder().redirectError(ProcessBuilder.Redirect.DISCARD);
    if (System.getProperty("os.name").startsWith("Windows")) {
      return process.command(java).start();
    }
    process.command().addAll(List.of("/bin/sh", "-c", shell));
    process.command().addAll(java);
    return process.start();
  }

  /** A process and the pipes to it. */
  private static final class Worker {

    private final Process process;
    private final DataOutputStream to;
    private final DataInputStream from;

    Worker(Process process) {
      this.process = process;
      to = new DataOutputStream(new BufferedOutputStream(process.getOutputStream(), 1 << 16));
      from = new DataInputStream(new BufferedInputStream(process.getInputStream(), 1 << 16));
    }

    boolean lives() {
      return process.isAlive();
    }

    Optional<Decoded> decode(EncodedPicture picture, Way way) throws IOException {
      to.writeByte(way.ordinal());
      picture.writeTo(to);
      to.flush();
      if (from.readLong() != DecodeProcess.ANSWER) {
        // What a dying process says of itself is no picture.
        throw new IOException("no answer");
      }
      int rows = from.readInt();
      if (rows == 0) {
        return Optional.empty();
      }
      int columns = from.readInt();
      int bits = from.readInt();
      Mat mat = new Mat(rows, columns, CvType.CV_8UC3);
      try {
        byte[] row = new byte[columns * 3];
        for (int y = 0; y < rows; y++) {
          from.readFully(row);
          mat.put(y, 0, row);
        }
        return Optional.of(new Decoded(new Frame(mat), bits));
      } catch (IOException e) {
        MatScope.release(mat);
        throw e;
      }
    }
  }
}
