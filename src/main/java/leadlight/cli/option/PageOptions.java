package leadlight.cli.option;

import java.util.Locale;
import java.util.Optional;
import leadlight.app.output.Reports;
import leadlight.app.output.Version;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.page.words.PageContext;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How pages for people are written. */
public final class PageOptions {

  @Mixin private LanguageOption language;

  @Option(
      names = "--units",
      paramLabel = "mm|mil|inch",
      defaultValue = "mm",
      description = "Unit of lengths in pages (default: ${DEFAULT-VALUE}).")
  private String units;

  /** What the pages of a run share. */
  public PageContext context(AcceptanceSet limits, RowRequest row) {
    Optional<Connector> connector = row.connector().map(ConnectorLibrary.builtIn()::find);
    return new PageContext(
        Version.number(), Reports.stated(limits), language.words(), unit(), connector);
  }

  /** The words of pages. */
  public Messages words() {
    return language.words();
  }

  private LengthUnit unit() {
    return switch (units.toLowerCase(Locale.ROOT)) {
      case "mm" -> LengthUnit.MM;
      case "mil" -> LengthUnit.MIL;
      case "inch" -> LengthUnit.INCH;
      default -> throw new UserError("--units must be mm, mil or inch, is " + units);
    };
  }
}
