package leadlight.page.words;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.connector.Connector;
import leadlight.connector.SignalGroup;
import leadlight.data.Basis;
import leadlight.data.DataFile;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;

/** From what a board does in use to the pins to look at first: {@code models/symptoms.json}. */
public record Symptoms(@JsonProperty(required = true) List<Symptom> symptoms) {

  /**
   * One symptom.
   *
   * @param id its name in the message files
   * @param text what is seen
   * @param connectors ids of connectors begin with one of these
   * @param groups ids of signal groups, the likeliest first
   * @param basis what this rests on
   * @param legs whether the anchor legs are to be looked at before any pin
   */
  public record Symptom(
      @JsonProperty(required = true) String id,
      @JsonProperty(required = true) String text,
      @JsonProperty(required = true) List<String> connectors,
      @JsonProperty(required = true) List<String> groups,
      @JsonProperty(required = true) Basis basis,
      Optional<Boolean> legs) {

    public boolean legsFirst() {
      return legs.orElse(false);
    }
  }

  /**
   * A symptom at one row.
   *
   * @param symptom the symptom
   * @param pins pins of each group, the likeliest group first; a group without pins is left out
   */
  public record AtRow(Symptom symptom, List<List<Integer>> pins) {}

  public static Symptoms builtIn() {
    return DataFile.builtIn("symptoms.json").read(Symptoms.class);
  }

  public List<AtRow> at(Connector connector, RowSpec row) {
    List<AtRow> there = new ArrayList<>();
    for (Symptom symptom : symptoms) {
      if (symptom.connectors().stream().anyMatch(connector.id()::startsWith)) {
        List<List<Integer>> pins = new ArrayList<>();
        for (String group : symptom.groups()) {
          pins.add(pins(connector, row, group));
        }
        pins.removeIf(List::isEmpty);
        if (!pins.isEmpty()) {
          there.add(new AtRow(symptom, pins));
        }
      }
    }
    return there;
  }

  private static List<Integer> pins(Connector connector, RowSpec row, String id) {
    List<SignalGroup> groups =
        connector.signals().stream().filter(group -> group.id().equals(id)).toList();
    return row.lands().stream()
        .filter(land -> groups.stream().anyMatch(g -> g.pins().containsKey(land.name())))
        .map(LandSpec::pin)
        .toList();
  }
}
