package leadlight.page;

import java.util.List;
import java.util.Optional;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.RowSpec;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;

/**
 * What all pages of a run share.
 *
 * @param toolVersion version of Leadlight
 * @param limitsName where the limits come from
 * @param limitsNotes how far they can be trusted
 * @param words language
 * @param unit unit of lengths
 * @param connector a connector of the user's own, if one was named; others are built in
 */
public record PageContext(
    String toolVersion,
    String limitsName,
    List<String> limitsNotes,
    Messages words,
    LengthUnit unit,
    Optional<Connector> connector) {

  /** Copies the list. */
  public PageContext {
    limitsNotes = List.copyOf(limitsNotes);
  }

  /** What the pages of a row say of its connector: the one given, or a built-in one of its id. */
  PageContext at(RowSpec row) {
    if (connector.map(Connector::id).equals(Optional.of(row.connectorId()))) {
      return this;
    }
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    Optional<Connector> builtIn =
        library.ids().contains(row.connectorId())
            ? Optional.of(library.find(row.connectorId()))
            : Optional.empty();
    return new PageContext(toolVersion, limitsName, limitsNotes, words, unit, builtIn);
  }
}
