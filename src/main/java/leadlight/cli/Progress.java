package leadlight.cli;

/** Says how far a long run is, on one line, to a person who watches; silent in a pipe. */
final class Progress {

  private final Streams streams;
  private final int total;

  Progress(Streams streams, int total) {
    this.streams = streams;
    this.total = total;
  }

  void done(int count) {
    if (streams.interactive()) {
      streams.err().print("\r" + count + " of " + total + (count == total ? "\n" : ""));
      streams.err().flush();
    }
  }
}
