package leadlight.page.words;

import java.util.Optional;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.row.RowSpec;
import leadlight.report.words.StatedLimits;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/**
 * What all pages of a run share.
 *
 * @param toolVersion version of Leadlight
 * @param limits where the limits come from
 * @param words language
 * @param unit unit of lengths
 * @param connector a connector of the user's own, if one was named; others are built in
 */
public record PageContext(
    String toolVersion,
    StatedLimits limits,
    Messages words,
    LengthUnit unit,
    Optional<Connector> connector) {

  /** What the pages of a row say of its connector: the one given, or a built-in one of its id. */
  public PageContext at(RowSpec row) {
    if (connector.map(Connector::id).equals(Optional.of(row.connectorId()))) {
      return this;
    }
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    Optional<Connector> builtIn =
        library.ids().contains(row.connectorId())
            ? Optional.of(library.find(row.connectorId()))
            : Optional.empty();
    return new PageContext(toolVersion, limits, words, unit, builtIn);
  }

  /** Sentences in the page's language and unit. */
  public Sentences sentences() {
    return new Sentences(words, unit);
  }

  /** Words of the connector and of symptoms in the page's language. */
  public DataWords data() {
    return new DataWords(words, connector);
  }
}
