package leadlight.batch;

import java.time.Clock;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.words.ReportContext;
import leadlight.vision.Frame;

/**
 * What all photos of a run have in common.
 *
 * @param limits the limits to judge by
 * @param opinions whose opinion on the solder decides
 * @param bench the enrolled bench that the photos come from, if one is known
 * @param context what every report says
 * @param page makes the page to read of a scored photo
 * @param person who asked for it
 * @param again score what is scored already once more
 * @param threads photos worked on at once, at least 1
 * @param clock tells the time and the zone
 * @param faults keeps the details of a fault of ours; gives the line to show
 */
public record RunSetup(
    AcceptanceSet limits,
    Opinions opinions,
    Optional<Bench> bench,
    ReportContext context,
    BiFunction<ScoredPhoto, Frame, byte[]> page,
    String person,
    boolean again,
    int threads,
    Clock clock,
    Function<Throwable, String> faults) {}
