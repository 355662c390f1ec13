package leadlight.cli.drill;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import leadlight.cli.terminal.Streams;
import leadlight.drill.sitting.DrillServer;
import leadlight.drill.sitting.Judging;
import leadlight.drill.sitting.TerminalDrill;
import picocli.CommandLine.Option;

/** How a set is put before a person: on a page, or in the terminal. */
public final class DrillDesk {

  @Option(names = "--terminal", description = "Ask in the terminal; the picture is opened beside.")
  private boolean terminal;

  /** True if nothing but the terminal is to be used. */
  boolean inTerminal() {
    return terminal;
  }

  /**
   * Sits the person down; returns when all is answered or the person leaves.
   *
   * @param pictures where the specimens' pictures lie, for the terminal
   */
  void sit(Judging judging, Path pictures, Streams streams) {
    if (terminal) {
      new TerminalDrill(judging, streams.in(), streams.out())
          .run(specimen -> beside(pictures.resolve(specimen), streams));
      return;
    }
    try (DrillServer server = DrillServer.start(judging)) {
      streams.out().println("open this address in a browser of this computer:");
      streams.out().println("  " + server.address());
      streams.out().println("answers are kept at once; leave by \"Finish\" or by Ctrl-C");
      if (streams.interactive()) {
        browse(server.address());
      }
      server.awaitLeave();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Opens an address in the browser, where the system can. */
  public static void browse(String address) {
    try {
      if (can(Desktop.Action.BROWSE)) {
        Desktop.getDesktop().browse(URI.create(address));
      }
    } catch (IOException e) {
      // The address stands in the terminal; a click on it does the same.
    }
  }

  private static void beside(Path picture, Streams streams) {
    streams.out().println("picture: " + picture.toAbsolutePath());
    try {
      if (streams.interactive() && can(Desktop.Action.OPEN)) {
        Desktop.getDesktop().open(picture.toFile());
      }
    } catch (IOException e) {
      // The path stands in the terminal.
    }
  }

  private static boolean can(Desktop.Action action) {
    return !GraphicsEnvironment.isHeadless()
        && Desktop.isDesktopSupported()
        && Desktop.getDesktop().isSupported(action);
  }
}
