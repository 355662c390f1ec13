package leadlight.summary.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;

/**
 * Pairs of photos that show one row of a board at two stages, one after the other. Photos belong
 * together if board, connector and port are the same; of several in one stage, those with the same
 * name.
 */
final class StagePairs {

  private final JobRecord record;

  StagePairs(JobRecord record) {
    this.record = record;
  }

  /** The pairs, in the order of the photos, which are sorted by job, board and stage. */
  List<BeforeAfter> of(List<PhotoLine> photos) {
    Map<List<String>, List<PhotoLine>> rows = new LinkedHashMap<>();
    for (PhotoLine photo : photos) {
      rows.computeIfAbsent(row(photo), key -> new ArrayList<>()).add(photo);
    }
    List<BeforeAfter> pairs = new ArrayList<>();
    for (List<PhotoLine> row : rows.values()) {
      Map<String, List<PhotoLine>> chains = new LinkedHashMap<>();
      boolean several = hasSeveralAtOneStage(row);
      row.forEach(
          photo ->
              chains
                  .computeIfAbsent(several ? stem(photo.file()) : "", key -> new ArrayList<>())
                  .add(photo));
      chains.values().forEach(chain -> add(pairs, chain));
    }
    return pairs;
  }

  private static List<String> row(PhotoLine photo) {
    return List.of(
        photo.subject().job(),
        photo.subject().board(),
        photo.connector(),
        photo.subject().port().orElse(""));
  }

  private static boolean hasSeveralAtOneStage(List<PhotoLine> row) {
    return row.stream().map(PhotoLine::subject).distinct().count() < row.size();
  }

  private static String stem(String file) {
    int dot = file.lastIndexOf('.');
    return dot > 0 ? file.substring(0, dot) : file;
  }

  private void add(List<BeforeAfter> pairs, List<PhotoLine> chain) {
    for (int i = 1; i < chain.size(); i++) {
      PhotoLine before = chain.get(i - 1);
      PhotoLine after = chain.get(i);
      if (!before.subject().equals(after.subject())) {
        String picture = "before-after-%03d.png".formatted(pairs.size() + 1);
        pairs.add(new BeforeAfter(before, after, changes(before, after), picture));
      }
    }
  }

  private List<PinChange> changes(PhotoLine before, PhotoLine after) {
    List<RecordedJoint> one = record.row(before.scoring()).joints();
    List<RecordedJoint> two = record.row(after.scoring()).joints();
    List<PinChange> changes = new ArrayList<>();
    for (int i = 0; i < Math.min(one.size(), two.size()); i++) {
      changes.add(PinChange.of(one.get(i), two.get(i)));
    }
    return changes;
  }
}
