package leadlight.quality;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import leadlight.model.UserError;

/**
 * A CSV file (RFC 4180, UTF-8, a header line) whose cells are read with line and column in every
 * refusal. Columns that nobody asks for are let be.
 */
public final class Table {

  private final String name;
  private final List<String> header;
  private final List<Row> rows = new ArrayList<>();

  private Table(String name, List<String> header, List<Row> rows) {
    this.name = name;
    this.header = header;
    this.rows.addAll(rows);
  }

  private Table(String name, List<NamedCsvRecord> records) {
    this(name, records.isEmpty() ? List.of() : records.get(0).getHeader(), List.of());
    records.forEach(r -> rows.add(new Row(r)));
    for (Row row : rows) {
      if (row.cells.getFieldCount() > header.size()) {
        throw row.trouble(
            "%d cells below %d headers; put text with commas in quotes"
                .formatted(row.cells.getFieldCount(), header.size()));
      }
    }
  }

  /**
   * Reads a file.
   *
   * @param required columns that must be there
   * @throws UserError if the file cannot be read, has no line below its header or lacks a column
   */
  public static Table read(Path file, String... required) {
    Table table = new Table(file.toString(), records(file));
    if (table.rows.isEmpty()) {
      throw new UserError(file + " has no line below its header; there is nothing to work on");
    }
    for (String column : required) {
      if (!table.has(column)) {
        throw new UserError(
            "%s has no column \"%s\" (it has %s); add it"
                .formatted(file, column, String.join(", ", table.header)));
      }
    }
    return table;
  }

  private static List<NamedCsvRecord> records(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new UserError(file + " is not a file; name a CSV file");
    }
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().detectBomHeader(true).ofNamedCsvRecord(file)) {
      return csv.stream().toList();
    } catch (CsvParseException e) {
      throw new UserError(file + " is no table: " + firstLine(e) + "; save it as CSV again");
    } catch (UncheckedIOException | IOException e) {
      throw new UserError(file + " cannot be read" + encoding(e) + "; check it");
    }
  }

  private static String firstLine(Throwable e) {
    Throwable root = e;
    while (root.getCause() instanceof CsvParseException) {
      root = root.getCause();
    }
    return String.valueOf(root.getMessage()).lines().findFirst().orElse("not readable");
  }

  private static String encoding(Throwable e) {
    return e.getCause() instanceof MalformedInputException ? " as UTF-8" : "";
  }

  /** How messages name the file. */
  public String name() {
    return name;
  }

  /** Whether there is a column of that name. */
  public boolean has(String column) {
    return header.contains(column);
  }

  /** The same with some of its lines alone. */
  public Table where(Predicate<Row> keep) {
    return new Table(name, header, rows.stream().filter(keep).toList());
  }

  /** The lines below the header, in order. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** One line. */
  public final class Row {

    private final NamedCsvRecord cells;

    private Row(NamedCsvRecord cells) {
      this.cells = cells;
    }

    /** A refusal that begins with file and line. */
    public UserError trouble(String what) {
      return new UserError(name + ", line " + cells.getStartingLineNumber() + ": " + what);
    }

    /** A refusal that names the column too. */
    public UserError trouble(String column, String what) {
      return new UserError(
          "%s, line %d, column %d (%s): %s"
              .formatted(
                  name, cells.getStartingLineNumber(), header.indexOf(column) + 1, column, what));
    }

    /** A cell, trimmed; empty if it is blank or its column is not there. */
    public Optional<String> maybe(String column) {
      return cells.findField(column).map(String::strip).filter(t -> !t.isEmpty());
    }

    /**
     * A cell that must not be blank.
     *
     * @throws UserError if it is
     */
    public String text(String column) {
      return maybe(column)
          .orElseThrow(() -> trouble("\"" + column + "\" is empty; fill it in or delete the line"));
    }

    /**
     * A finite number.
     *
     * @throws UserError if the cell is none
     */
    public double number(String column) {
      String text = text(column);
      try {
        double value = Double.parseDouble(text);
        if (Double.isFinite(value)) {
          return value;
        }
      } catch (NumberFormatException e) {
        // Said below, as for what is not finite.
      }
      throw trouble("\"" + column + "\" is \"" + text + "\", not a number such as 0.25");
    }

    /**
     * A whole number, 0 or more.
     *
     * @throws UserError if the cell is none
     */
    public int count(String column) {
      double value = number(column);
      if (value < 0 || value > Integer.MAX_VALUE || value != Math.rint(value)) {
        throw trouble("\"" + column + "\" is " + text(column) + ", not a count such as 12");
      }
      return (int) value;
    }
  }
}
