package leadlight.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.data.JsonText;
import org.jdbi.v3.core.Handle;

/** Compares the chain with itself, with the rows it proves, and with their files. */
final class ChainCheck {

  private final Handle handle;
  private final Chain chain;
  private final List<String> troubles = new ArrayList<>();

  ChainCheck(Handle handle) {
    this.handle = handle;
    this.chain = new Chain(handle);
  }

  List<String> troubles(Optional<Seal> seal) {
    List<Chain.Entry> entries = chain.entries();
    links(entries);
    seal.ifPresent(kept -> sealed(kept, entries));
    Map<String, Chain.Entry> last = new TreeMap<>();
    entries.forEach(entry -> last.put(entry.kind() + " " + entry.ref(), entry));
    for (EntryKind kind : EntryKind.values()) {
      rows(kind, last);
    }
    return troubles;
  }

  /** Each entry follows the one before, from the first to the last that was ever written. */
  private void links(List<Chain.Entry> entries) {
    String before = Chain.first();
    long number = 1;
    for (Chain.Entry entry : entries) {
      if (entry.id() != number) {
        troubles.add("the chain lacks entry " + number + (number == 1 ? "" : since(entry)));
        number = entry.id();
      } else if (!entry.hash().equals(entry.hashAfter(before))) {
        troubles.add("the chain is broken at entry " + number + since(entry));
      }
      before = entry.hash();
      number++;
    }
    long ever =
        handle
            .select("SELECT seq FROM sqlite_sequence WHERE name = 'entry'")
            .mapTo(Long.class)
            .findOne()
            .orElse(0L);
    if (ever != number - 1) {
      troubles.add("the chain ends at entry " + (number - 1) + " of " + ever);
    }
    if (entries.isEmpty() || !entries.get(0).kind().equals(Chain.BEGUN)) {
      troubles.add("the chain has no beginning");
    }
  }

  private static String since(Chain.Entry entry) {
    return entry.at().isEmpty() ? "" : ", written for " + entry.at();
  }

  private void sealed(Seal seal, List<Chain.Entry> entries) {
    boolean there =
        entries.stream().anyMatch(it -> it.id() == seal.entries() && it.hash().equals(seal.hash()));
    if (!there) {
      troubles.add(
          "the record is not the one that was sealed: entry "
              + seal.entries()
              + " is another; what stands up to it was changed after the seal was printed");
    }
  }

  private void rows(EntryKind kind, Map<String, Chain.Entry> last) {
    Set<Long> rows = new HashSet<>(chain.rows(kind));
    for (Chain.Entry entry : last.values()) {
      if (entry.kind().equals(kind.table())) {
        compare(kind, entry);
        rows.remove(entry.ref());
      }
    }
    rows.stream()
        .sorted()
        .forEach(
            ref ->
                troubles.add(
                    kind.words() + " " + ref + " was not written by Leadlight: no entry has it"));
  }

  private void compare(EntryKind kind, Chain.Entry entry) {
    String what = kind.words() + " " + entry.ref() + ", recorded " + entry.at();
    Optional<String> now = chain.content(kind, entry.ref());
    if (now.isEmpty()) {
      troubles.add(what + ", was taken out after that");
      return;
    }
    if (!now.get().equals(entry.content())) {
      troubles.add(what + ", was changed after that");
    }
    if (kind == EntryKind.SCORING) {
      files(what, entry);
    }
  }

  private void files(String what, Chain.Entry entry) {
    Map<String, String> now = Chain.files(chain.results(entry.ref()));
    JsonNode then = JsonText.read(entry.files(), JsonNode.class);
    Map<String, String> recorded = new HashMap<>();
    then.fields().forEachRemaining(file -> recorded.put(file.getKey(), file.getValue().asText()));
    new TreeMap<>(recorded)
        .forEach(
            (name, hash) -> {
              if (!now.containsKey(name)) {
                troubles.add(what + ": its file " + name + " is gone");
              } else if (!now.get(name).equals(hash)) {
                troubles.add(what + ": its file " + name + " was changed after that");
              }
            });
  }
}
