package tiewright.cli;

import java.io.PrintWriter;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import tiewright.rating.Assumptions;
import tiewright.rating.ServeRates;
import tiewright.rating.Stated;
import tiewright.scoring.Format;

/** What whoever asks states of the assumptions behind ratings; what is not stated is estimated from the games or the usual. */
final class Assumed {
    @Option(
            names = "--serve",
            paramLabel = "P",
            description = "Chance of the serving side to win a rally between equal pairs, 0 to 1.")
    private @Nullable Double serve;

    @Option(
            names = "--form-spread",
            paramLabel = "S",
            description = "Standard deviation of the forms of players, in rallies per 100.")
    private @Nullable Double formSpread;

    @Option(
            names = "--extra-spread",
            paramLabel = "S",
            description = "Standard deviation of what pairs have beyond the forms of their players.")
    private @Nullable Double extraSpread;

    @Option(
            names = "--drift",
            paramLabel = "D",
            description = "By how much forms move: the standard deviation of a form one year later.")
    private @Nullable Double drift;

    @Option(
            names = "--shared",
            paramLabel = "S",
            description = "Standard deviation of what the games of one rubber share beside the strengths.")
    private @Nullable Double shared;

    Stated stated() {
        return new Stated(
                serve == null ? ServeRates.USUAL : ServeRates.of(chance(serve)),
                spread("--form-spread", formSpread),
                spread("--extra-spread", extraSpread),
                spread("--drift", drift),
                spread("--shared", shared));
    }

    private static double chance(double serve) {
        if (!(serve > 0 && serve < 1)) {
            throw new BadInput("--serve is a chance above 0 and below 1.");
        }
        return serve;
    }

    private static OptionalDouble spread(String option, @Nullable Double value) {
        if (value == null) {
            return OptionalDouble.empty();
        }
        if (!(value >= 0 && value <= Stated.MOST)) {
            throw new BadInput(option + " is a number of rallies in 100, 0 to 50.");
        }
        return OptionalDouble.of(value);
    }

    /** What was stated, estimated or taken as usual. */
    static void say(PrintWriter err, Assumptions assumptions, Format.Kind kind) {
        err.println("serve=" + assumptions.serving().of(kind));
        err.println("form-spread=" + assumptions.formSpread());
        err.println("extra-spread=" + assumptions.extraSpread());
        err.println("drift=" + assumptions.drift());
        err.println("shared=" + assumptions.shared());
    }
}
