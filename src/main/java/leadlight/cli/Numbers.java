package leadlight.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Numbers as people write them: a decimal point or comma, and millimetres behind them or not. A
 * class, since a method reference in its place makes Java 17 fail while it archives classes.
 */
final class Numbers implements ITypeConverter<Double> {

  private static final Pattern NUMBER =
      Pattern.compile("([+-]?\\d*[.,]?\\d+(?:[eE][+-]?\\d+)?)\\s*(?:mm)?");

  @Override
  public Double convert(String text) {
    Matcher matcher = NUMBER.matcher(text.strip());
    try {
      // What else Java takes for a number, as NaN, is refused by who knows the range.
      return Double.valueOf(matcher.matches() ? matcher.group(1).replace(',', '.') : text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("'" + text + "' is not a number, as 0.5, 0,5 or 0.5mm");
    }
  }
}
