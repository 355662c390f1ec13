package leadlight.cli.trial;

import java.util.Arrays;
import leadlight.model.Opinions;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads whose opinion decides by its name in files. */
final class WhoseOpinions implements ITypeConverter<Opinions> {

  @Override
  public Opinions convert(String id) {
    return Arrays.stream(Opinions.values())
        .filter(opinions -> opinions.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException("say both, measures or reader, not " + id));
  }
}
