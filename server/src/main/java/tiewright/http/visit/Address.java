package tiewright.http.visit;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;

/** What an address names, as far as the event has it; what it has not is a page that is not there. */
record Address(Context ctx, VisibleEvent event) {
    Tie tie() {
        return id("tie", TieId::of)
                .flatMap(event::tie)
                .orElseThrow(() -> new NotFound(
                        "There is no tie \"" + ctx.pathParam("tie") + "\". The list of ties has them all."));
    }

    RubberNo rubber() {
        return RubberNo.parse(ctx.pathParam("rubber"))
                .filter(rubber -> rubber.isDecider()
                        || rubber.number() <= event.conditions().rubbers())
                .orElseThrow(() -> new NotFound("A tie has no rubber \"" + ctx.pathParam("rubber") + "\"."));
    }

    /** Empty if the address has something there that cannot be an id. */
    <T> Optional<T> id(String name, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(ctx.pathParam(name)));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
