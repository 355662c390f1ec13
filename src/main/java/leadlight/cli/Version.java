package leadlight.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar's manifest. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"leadlight " + (version == null ? "(not packaged)" : version)};
  }
}
