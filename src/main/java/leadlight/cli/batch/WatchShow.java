package leadlight.cli.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.app.output.OutputFolder;
import leadlight.app.record.RecordLines;
import leadlight.batch.Outcome;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.record.scoring.RunPhoto;

/** Says what became of each photo that arrived: a line, and the latest picture if wanted. */
final class WatchShow {

  private static final String PICTURE = "latest.png";

  /** Shows the picture anew each second; nothing from outside stands in it. */
  private static final String PAGE =
      """
      <!doctype html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta http-equiv="refresh" content="1">
      <title>The latest photo</title>
      </head>
      <body><img src="latest.png" alt="The latest photo, scored" width="100%"></body>
      </html>
      """;

  private final Streams streams;
  private final boolean open;
  private final Path out;

  WatchShow(Streams streams, boolean open, Path out) {
    this.streams = streams;
    this.open = open;
    this.out = out;
    if (open) {
      OutputFolder.make(out);
      WholeFile.write(out.resolve("latest.html"), PAGE.getBytes(StandardCharsets.UTF_8));
      streams.err().println("leadlight: the latest photo is in " + out.resolve("latest.html"));
    }
  }

  void took(Outcome outcome) {
    if (outcome.message().isPresent()) {
      streams.err().println("leadlight: " + outcome.message().get());
    } else if (outcome.kind() == RunPhoto.Outcome.SCORED) {
      streams.out().println(line(outcome));
      streams.out().flush();
      if (open) {
        show(outcome.results().orElseThrow());
      }
    }
  }

  private static String line(Outcome outcome) {
    return "%s, %s, %s, %s: %s"
        .formatted(
            RecordLines.printable(outcome.photo().subject().job()),
            RecordLines.board(outcome.photo().subject().board()),
            outcome.photo().subject().words(),
            RecordLines.printable(outcome.photo().photo().getFileName().toString()),
            outcome.verdict().orElseThrow().id());
  }

  private void show(Path json) {
    String name = json.getFileName().toString();
    Path picture =
        json.resolveSibling(name.substring(0, name.length() - ".json".length()) + ".annotated.png");
    try {
      WholeFile.write(out.resolve(PICTURE), Files.readAllBytes(picture));
    } catch (UserError e) {
      streams.err().println("leadlight: " + e.getMessage());
    } catch (IOException e) {
      streams.err().println("leadlight: " + picture + " is gone again; it is not shown");
    }
  }
}
