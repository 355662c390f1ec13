package leadlight.record.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.data.JsonText;
import leadlight.record.engine.Engine;
import org.jdbi.v3.core.Handle;

/** Compares the chain with itself, with the rows it proves, and with their files. */
public final class ChainCheck {

  private final Handle handle;
  private final Chain chain;
  private final boolean withFiles;

  /** Once each: all entries of a row may tell the same. */
  private final Set<String> troubles = new LinkedHashSet<>();

  /**
   * Takes a record.
   *
   * @param withFiles whether results are compared too; those of an imported record lie elsewhere
   */
  ChainCheck(Handle handle, boolean withFiles) {
    this.handle = handle;
    this.withFiles = withFiles;
    this.chain = new Chain(handle);
  }

  List<String> troubles(Optional<Seal> seal) {
    List<Chain.Entry> entries = chain.entries();
    links(entries);
    seal.ifPresent(kept -> sealed(kept, entries));
    for (EntryKind kind : EntryKind.values()) {
      rows(kind, entries);
    }
    return List.copyOf(troubles);
  }

  /**
   * What of a scoring, or of its files that are there, is not as its entries say, in a line each.
   */
  public static List<String> altered(Handle handle, long scoring) {
    ChainCheck check = new ChainCheck(handle, false);
    List<Chain.Entry> entries =
        check.chain.entries().stream()
            .filter(
                entry -> entry.kind().equals(EntryKind.SCORING.table()) && entry.ref() == scoring)
            .toList();
    if (!entries.isEmpty()) {
      check.compare(EntryKind.SCORING, scoring, entries);
      if (!Rewriting.begun(handle).contains(scoring)) {
        check.files("its", entries.get(entries.size() - 1), false);
      }
    }
    return List.copyOf(check.troubles);
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
    long ever = Engine.of(handle).entriesEver(handle);
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
    boolean there = entries.stream().anyMatch(it -> seal.isOf(it.id(), it.hash()));
    if (!there) {
      troubles.add(
          "the record is not the one that was sealed: entry "
              + seal.entries()
              + " is another; what stands up to it was changed after the seal was printed");
    }
  }

  /**
   * The rows of a kind beside all their entries: a later entry must not make good what was changed
   * before it.
   */
  private void rows(EntryKind kind, List<Chain.Entry> entries) {
    Map<Long, List<Chain.Entry>> byRow = new TreeMap<>();
    entries.stream()
        .filter(entry -> entry.kind().equals(kind.table()))
        .forEach(entry -> byRow.computeIfAbsent(entry.ref(), ref -> new ArrayList<>()).add(entry));
    byRow.forEach((ref, mine) -> compare(kind, ref, mine));
    chain.rows(kind).stream()
        .filter(ref -> !byRow.containsKey(ref))
        .forEach(
            ref ->
                troubles.add(
                    kind.words() + " " + ref + " was not written by Leadlight: no entry has it"));
  }

  private void compare(EntryKind kind, long ref, List<Chain.Entry> entries) {
    Chain.Entry last = entries.get(entries.size() - 1);
    String what = kind.words() + " " + ref + ", recorded " + last.at();
    Optional<String> now = chain.content(kind, ref);
    if (now.isEmpty()) {
      troubles.add(what + ", was taken out after that");
      return;
    }
    if (entries.stream().anyMatch(entry -> !now.get().equals(entry.content()))) {
      troubles.add(what + ", was changed after that");
    }
    if (withFiles && kind == EntryKind.SCORING) {
      if (Rewriting.begun(handle).contains(ref)) {
        troubles.add(
            what
                + ": its results were being written when Leadlight was stopped; score the photo"
                + " again, or start the bench page, and they are up to date");
      } else {
        files(what + ": its", last, true);
      }
    }
  }

  private void files(String whose, Chain.Entry entry, boolean orGone) {
    Path report = chain.results(entry.ref());
    Map<String, String> now = Chain.files(report);
    JsonNode then = JsonText.read(entry.files(), JsonNode.class);
    for (String name : Chain.names(report)) {
      if (then.has(name)) {
        String hash = now.getOrDefault(name, "");
        if (hash.isEmpty()) {
          if (orGone) {
            troubles.add(whose + " file " + name + " is gone");
          }
        } else if (hash.equals(Chain.UNREADABLE)) {
          troubles.add(whose + " file " + name + " cannot be read");
        } else if (!hash.equals(then.get(name).asText())) {
          troubles.add(whose + " file " + name + " was changed after that");
        }
      }
    }
  }
}
