package leadlight.app.output;

/** The program's version, from the jar's manifest. */
public final class Version {

  private Version() {}

  public static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "not packaged" : version;
  }
}
