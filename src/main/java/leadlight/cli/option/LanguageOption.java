package leadlight.cli.option;

import leadlight.text.Messages;
import picocli.CommandLine.Option;

/** In which language people are spoken to. */
public final class LanguageOption {

  @Option(
      names = "--language",
      paramLabel = "en|de",
      defaultValue = "en",
      description = "Language of pages, and its decimal sign (default: ${DEFAULT-VALUE}).")
  private String language;

  /** The words of pages. */
  public Messages words() {
    return Messages.of(language);
  }
}
