package leadlight.page.words;

import java.util.Locale;
import java.util.Optional;
import leadlight.connector.BridgeHarm;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.SignalGroup;
import leadlight.data.Basis;
import leadlight.text.Messages;

/**
 * Words of connectors and symptoms in a page's language, found by the ids of their files. A
 * connector of the user's own keeps its own words, whatever its id.
 */
public final class DataWords {

  private final Messages words;
  private final Optional<Connector> builtIn;

  DataWords(Messages words, Optional<Connector> connector) {
    this.words = words;
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    this.builtIn =
        connector.filter(c -> library.ids().contains(c.id()) && library.find(c.id()).equals(c));
  }

  private String own(String key, String own) {
    return builtIn.map(c -> words.ofConnector(c.id(), key, own)).orElse(own);
  }

  public String name(Connector connector) {
    return own("name", connector.name());
  }

  public String name(SignalGroup group) {
    return own(key(group) + ".name", group.name());
  }

  /** What a land carries. */
  public String signal(SignalGroup group, String land) {
    return own(key(group) + ".pin." + land, group.pins().get(land));
  }

  public String open(SignalGroup group) {
    return own(key(group) + ".open", group.open());
  }

  public String shorted(SignalGroup group) {
    return own(key(group) + ".shorted", group.shorted());
  }

  public String basis(SignalGroup group) {
    String key = key(group) + ".basis";
    return basis(
        group.basis(),
        own(key + ".source", group.basis().source()),
        group.basis().note().map(note -> own(key + ".note", note)));
  }

  private static String key(SignalGroup group) {
    return "signal." + group.id();
  }

  public String harm(BridgeHarm bridge) {
    return own("bridge." + String.join("-", bridge.pins()), bridge.harm());
  }

  public String text(Symptoms.Symptom symptom) {
    return words.data(key(symptom), symptom.text());
  }

  public String basis(Symptoms.Symptom symptom) {
    return basis(
        symptom.basis(),
        words.data(key(symptom) + ".source", symptom.basis().source()),
        symptom.basis().note().map(note -> words.data(key(symptom) + ".note", note)));
  }

  private static String key(Symptoms.Symptom symptom) {
    return "symptom." + symptom.id();
  }

  /** "IPC-A-610J, Table 8-5 (from memory); a note". */
  private String basis(Basis basis, String source, Optional<String> note) {
    String provenance = basis.provenance().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return source
        + basis.clause().map(clause -> ", " + clause).orElse("")
        + " ("
        + words.get("provenance." + provenance)
        + ")"
        + note.map(n -> "; " + n).orElse("");
  }
}
