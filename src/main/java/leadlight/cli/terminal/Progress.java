package leadlight.cli.terminal;

import java.util.Locale;

/**
 * Says how far a long run is, at what rate and how long it will still take, on one line, to a
 * person who watches; silent in a pipe.
 */
public final class Progress {

  private static final double NS_PER_S = 1e9;

  private final Streams streams;
  private final int total;
  private final long startNs = System.nanoTime();

  public Progress(Streams streams, int total) {
    this.streams = streams;
    this.total = total;
  }

  public void done(int count) {
    if (streams.interactive()) {
      streams.err().print("\r" + line(count, (System.nanoTime() - startNs) / NS_PER_S) + "  ");
      streams.err().print(count == total ? "\n" : "");
      streams.err().flush();
    }
  }

  private String line(int count, double seconds) {
    if (count == 0 || seconds <= 0) {
      return count + " of " + total;
    }
    long left = Math.round((total - count) * seconds / count);
    return String.format(
        Locale.ROOT,
        "%d of %d, %.1f a second, %d:%02d min left",
        count,
        total,
        count / seconds,
        left / 60,
        left % 60);
  }
}
