package leadlight.data;

/** Cells of tables that people open in a spreadsheet. */
public final class Cells {

  private Cells() {}

  /**
   * Text that a spreadsheet will not run as a formula: an apostrophe goes before a leading = + - @,
   * tabulator or line end (OWASP, "CSV Injection").
   */
  public static String harmless(String text) {
    return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
