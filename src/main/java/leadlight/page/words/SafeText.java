package leadlight.page.words;

/**
 * Names from outside (files, jobs, boards, people), made harmless to the page's shape: control
 * characters and the marks that turn the direction of text (Unicode UAX #9) are shown by their
 * number, never obeyed. Markup is the templates' business.
 */
public final class SafeText {

  private SafeText() {}

  public static String of(String outside) {
    StringBuilder safe = new StringBuilder();
    outside
        .codePoints()
        .forEach(
            c -> {
              if (harmless(c)) {
                safe.appendCodePoint(c);
              } else {
                safe.append('\u27e8').append(String.format("%04X", c)).append('\u27e9');
              }
            });
    return safe.toString();
  }

  private static boolean harmless(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      default -> true;
    };
  }
}
