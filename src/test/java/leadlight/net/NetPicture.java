package leadlight.net;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.row.RowSpec;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TruthFolder;

/**
 * One picture of the net.
 *
 * @param file the picture
 * @param kind what it stands for: its name without its number
 * @param truth what is true of its joints; empty where no answer but a refusal is right
 * @param told the row that the user asks for
 */
record NetPicture(Path file, String kind, Optional<PhotoTruth> truth, RowSpec told) {

  private static final Path FOLDER = Path.of("src/test/resources/leadlight/net");

  /** All pictures, in a fixed order. */
  static List<NetPicture> all() {
    List<NetPicture> pictures = new ArrayList<>();
    TruthFolder.read(FOLDER)
        .forEach(
            trial ->
                pictures.add(
                    new NetPicture(
                        trial.file(),
                        kind(trial.file()),
                        trial.truth(),
                        spec(trial.truth().orElseThrow()))));
    for (String line : lines("told.csv")) {
      String[] cells = line.split(",");
      Path file = FOLDER.resolve(cells[0] + ".jpg");
      RowSpec told = plain(Integer.parseInt(cells[1]), Double.parseDouble(cells[2]));
      pictures.add(new NetPicture(file, kind(file), Optional.empty(), told));
    }
    return pictures;
  }

  /** Lines of a table of the net, without its heading. */
  static List<String> lines(String name) {
    try {
      List<String> all = Files.readAllLines(FOLDER.resolve(name));
      return all.subList(1, all.size());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String kind(Path file) {
    String name = file.getFileName().toString();
    return name.startsWith("no-row") ? "no-row" : name.substring(0, name.lastIndexOf('-'));
  }

  private static RowSpec spec(PhotoTruth truth) {
    return truth
        .connector()
        .map(id -> ConnectorLibrary.builtIn().find(id))
        .map(known -> known.rowSpec(0, OptionalInt.of(truth.leads())))
        .orElseGet(() -> plain(truth.leads(), truth.pitchMm()));
  }

  private static RowSpec plain(int leads, double pitchMm) {
    return RowSpec.plain(leads, pitchMm, OptionalDouble.empty(), OptionalDouble.empty());
  }
}
