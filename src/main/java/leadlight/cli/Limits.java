package leadlight.cli;

import leadlight.grade.AcceptanceSet;

/** The limits to judge by. */
final class Limits {

  AcceptanceSet load() {
    return new AcceptanceSet("ipc-a-610-gull-wing");
  }
}
