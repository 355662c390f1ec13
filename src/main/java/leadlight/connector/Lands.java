package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.row.LandSpec;

/** The lands of a row: evenly pitched, or each with its own place. */
@JsonTypeInfo(use = JsonTypeInfo.Id.DEDUCTION)
@JsonSubTypes({@JsonSubTypes.Type(Lands.Even.class), @JsonSubTypes.Type(Lands.Each.class)})
public sealed interface Lands {

  /**
   * The lands in order, the first at 0.
   *
   * @param leads how many; only an even row whose file gives {@code any_count} takes another number
   *     than its own
   * @throws IllegalArgumentException if the row cannot have that many
   */
  List<LandSpec> at(OptionalInt leads);

  /** True if the number of leads is left to the user. */
  boolean anyCount();

  /**
   * Equal lands at equal distances.
   *
   * @param leads how many, or how many unless the user says
   * @param pitchMm distance of neighbours
   * @param widthMm land width across the lead
   * @param lengthMm land length along the lead
   * @param names pin names in order; the numbers 1 to N if absent
   * @param anyCount the numbers of leads that such a row comes with, if it is not one
   */
  record Even(
      @JsonProperty(required = true) int leads,
      @JsonProperty(required = true) double pitchMm,
      @JsonProperty(required = true) double widthMm,
      @JsonProperty(required = true) double lengthMm,
      List<String> names,
      @JsonProperty("any_count") Optional<Range> counts)
      implements Lands {

    /** Refuses fewer than three leads, lands that touch, and names that do not fit the number. */
    public Even {
      Mm.within("leads", leads, 3, 1000);
      Mm.length("pitch_mm", pitchMm);
      Mm.length("width_mm", widthMm);
      Mm.length("length_mm", lengthMm);
      names = Copies.list(names);
      if (widthMm >= pitchMm) {
        throw new IllegalArgumentException("lands touch: width_mm must be below pitch_mm");
      }
      if (!names.isEmpty() && (names.size() != leads || counts.isPresent())) {
        throw new IllegalArgumentException(
            "names must be one for each of the leads, and none with any_count");
      }
      if (counts.isPresent() && !counts.get().holds(leads)) {
        throw new IllegalArgumentException("leads must lie within any_count");
      }
    }

    @Override
    public boolean anyCount() {
      return counts.isPresent();
    }

    @Override
    public List<LandSpec> at(OptionalInt asked) {
      int count = asked.orElse(leads);
      if (count != leads && (counts.isEmpty() || !counts.get().holds(count))) {
        throw new IllegalArgumentException(
            "has "
                + counts.map(r -> r.least() + " to " + r.most()).orElse(String.valueOf(leads))
                + " leads, not "
                + count);
      }
      List<LandSpec> lands = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        String name = names.isEmpty() ? Integer.toString(i + 1) : names.get(i);
        lands.add(
            new LandSpec(
                i + 1,
                name,
                Mm.tidy(i * pitchMm),
                OptionalDouble.of(widthMm),
                OptionalDouble.of(lengthMm)));
      }
      return List.copyOf(lands);
    }
  }

  /**
   * Lands with places of their own.
   *
   * @param each the lands in order, pin 1 first
   */
  record Each(@JsonProperty(required = true) List<Land> each) implements Lands {

    /** Refuses fewer than three lands, a repeated name, lands that touch or stand out of order. */
    public Each {
      each = Copies.list(each);
      if (each.size() < 3) {
        throw new IllegalArgumentException("a row needs three lands or more");
      }
      if (each.get(0).uMm() != 0) {
        throw new IllegalArgumentException("the first land must have u_mm 0");
      }
      if (new HashSet<>(each.stream().map(Land::name).toList()).size() < each.size()) {
        throw new IllegalArgumentException("two lands of a row have one name");
      }
      for (int i = 1; i < each.size(); i++) {
        each.get(i).requireBeyond(each.get(i - 1));
      }
    }

    @Override
    public boolean anyCount() {
      return false;
    }

    @Override
    public List<LandSpec> at(OptionalInt asked) {
      if (asked.orElse(each.size()) != each.size()) {
        throw new IllegalArgumentException(
            "has " + each.size() + " leads, not " + asked.getAsInt());
      }
      List<LandSpec> lands = new ArrayList<>();
      for (Land land : each) {
        lands.add(
            new LandSpec(
                lands.size() + 1,
                land.name(),
                land.uMm(),
                OptionalDouble.of(land.widthMm()),
                OptionalDouble.of(land.lengthMm())));
      }
      return List.copyOf(lands);
    }
  }

  /**
   * One land.
   *
   * @param name pin name; several joined by a slash where pins share the land, as "A1/B12"
   * @param uMm place of its middle along the row from the first land's
   * @param widthMm width across the lead
   * @param lengthMm length along the lead
   */
  record Land(
      @JsonProperty(required = true) String name,
      @JsonProperty(required = true) double uMm,
      @JsonProperty(required = true) double widthMm,
      @JsonProperty(required = true) double lengthMm) {

    /** Refuses lengths that no land has. */
    public Land {
      Mm.within("u_mm", uMm, 0, 1000);
      Mm.length("width_mm", widthMm);
      Mm.length("length_mm", lengthMm);
    }

    private void requireBeyond(Land before) {
      if (!(uMm - widthMm / 2 > before.uMm + before.widthMm / 2)) {
        throw new IllegalArgumentException(
            "lands must follow one another without touching: " + before.name + ", " + name);
      }
    }
  }

  /**
   * Numbers of leads.
   *
   * @param least fewest
   * @param most most
   */
  record Range(@JsonProperty(required = true) int least, @JsonProperty(required = true) int most) {

    /** Refuses fewer than three and a range without members. */
    public Range {
      Mm.within("least", least, 3, 1000);
      Mm.within("most", most, least, 1000);
    }

    boolean holds(int count) {
      return count >= least && count <= most;
    }
  }
}
