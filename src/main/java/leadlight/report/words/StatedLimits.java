package leadlight.report.words;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.joint.Finding;
import leadlight.model.joint.LimitCheck;
import leadlight.text.Messages;

/**
 * Where the limits of a page come from and how far they can be trusted, in the words of their file.
 *
 * @param id the set's id
 * @param builtIn true if it is one of Leadlight's own, whose words other languages have by its ids;
 *     a user's own file keeps its words
 * @param name where the limits come from
 * @param notes how far they can be trusted
 */
public record StatedLimits(String id, boolean builtIn, String name, List<String> notes) {

  /** Copies the list. */
  public StatedLimits {
    notes = List.copyOf(notes);
  }

  private String own(Messages words, String key, String own) {
    return builtIn ? words.data("limits." + id + "." + key, own) : own;
  }

  public String name(Messages words) {
    return own(words, "name", name);
  }

  public List<String> notes(Messages words) {
    List<String> said = new ArrayList<>();
    for (String note : notes) {
      said.add(own(words, "note." + (said.size() + 1), note));
    }
    return said;
  }

  /** The clause that a finding rests on; people and the bench need none. */
  public String rule(Finding finding, Messages words) {
    return finding.clause().isEmpty()
        ? words.get("page.rule.said")
        : own(words, "rule." + finding.kind().id(), finding.clause());
  }

  /** The clause that a limit comes from. */
  public String limit(LimitCheck check, Messages words) {
    return own(words, "limit." + check.measure().id(), check.clause());
  }
}
