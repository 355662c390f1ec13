package leadlight.cli.terminal;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar's manifest. */
public final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"leadlight " + number()};
  }

  public static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "not packaged" : version;
  }
}
