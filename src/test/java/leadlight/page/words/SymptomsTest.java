package leadlight.page.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.SignalGroup;
import leadlight.page.ScoredRow;
import org.junit.jupiter.api.Test;

class SymptomsTest {

  @Test
  void noPictureLeadsToHotPlugSupplyAndClock() {
    Symptoms.AtRow none =
        Symptoms.builtIn().at(ScoredRow.CONNECTOR, ScoredRow.SCORED.settings().row()).get(0);
    assertThat(none.symptom().text()).startsWith("No picture");
    assertThat(none.pins())
        .as("pins 19, 18, 10 and 12, 17 by the HDMI type A assignment")
        .containsExactly(List.of(19), List.of(18), List.of(10, 12), List.of(17));
  }

  @Test
  void eachGroupThatASymptomNamesIsKnownToItsConnectors() {
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    for (Symptoms.Symptom symptom : Symptoms.builtIn().symptoms()) {
      for (String front : symptom.connectors()) {
        Set<String> known =
            library.ids().stream()
                .filter(id -> id.startsWith(front))
                .map(library::find)
                .map(Connector::signals)
                .flatMap(List::stream)
                .map(SignalGroup::id)
                .collect(Collectors.toSet());
        assertThat(known).as(symptom.text()).containsAll(symptom.groups());
      }
    }
  }
}
