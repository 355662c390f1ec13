package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Comparator;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** The connectors that Leadlight knows: those of {@code models/connectors}, and files by path. */
public final class ConnectorLibrary {

  private static final int SUGGESTIONS = 3;
  private static final JaroWinklerSimilarity LIKENESS = new JaroWinklerSimilarity();

  private final List<String> ids;

  private ConnectorLibrary(List<String> ids) {
    this.ids = ids;
  }

  /** The built-in connectors; they are read when asked for. */
  public static ConnectorLibrary builtIn() {
    return new ConnectorLibrary(
        DataFile.builtIn("connectors/catalogue.json").read(Catalogue.class).connectors());
  }

  /** Ids of the built-in connectors, in the catalogue's order. */
  public List<String> ids() {
    return ids;
  }

  /**
   * A connector by id, or from a user's own file by a path that ends in {@code .json}.
   *
   * @throws UserError if there is no such connector (with the nearest names), or the file does not
   *     fit
   */
  public Connector find(String idOrFile) {
    if (ids.contains(idOrFile)) {
      return DataFile.builtIn("connectors/" + idOrFile + ".json").read(Connector.class);
    }
    if (idOrFile.endsWith(".json")) {
      return DataFile.at(idOrFile).read(Connector.class);
    }
    throw new UserError(
        "no connector named \""
            + idOrFile
            + "\"; nearest are "
            + String.join(", ", nearest(idOrFile))
            + " (\"leadlight connector list\" shows all)");
  }

  private List<String> nearest(String asked) {
    return ids.stream()
        .sorted(Comparator.comparingDouble(id -> -LIKENESS.apply(asked, id)))
        .limit(SUGGESTIONS)
        .toList();
  }

  /** The catalogue's file: a packed folder cannot list itself. */
  record Catalogue(@JsonProperty(required = true) List<String> connectors) {
    Catalogue {
      connectors = List.copyOf(connectors);
    }
  }
}
