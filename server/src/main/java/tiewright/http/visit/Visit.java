package tiewright.http.visit;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Held;
import tiewright.event.PrivateDecision;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.Viewer;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Asker;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Forms;
import tiewright.ledger.Answer;
import tiewright.wording.Words;

/** One request: who asks, what that viewer may know, and the ways to answer. */
public final class Visit {
    private final Context ctx;
    private final Hall hall;
    private final Visitor visitor;
    private final Asker asker;
    private final long noted;

    public Visit(Context ctx, Hall hall, Visitor visitor, Asker asker) {
        this.ctx = ctx;
        this.hall = hall;
        this.visitor = visitor;
        this.asker = asker;
        // read before any note is: what is noted in between makes the form stale, never unseen
        this.noted = ownClub().map(hall.ledger()::noted).orElse(0L);
    }

    public Context ctx() {
        return ctx;
    }

    public Hall hall() {
        return hall;
    }

    public Visitor visitor() {
        return visitor;
    }

    public Viewer viewer() {
        return visitor.viewer();
    }

    public Role role() {
        return visitor.role();
    }

    public VisibleEvent event() {
        return asker.event();
    }

    /** Whether this is the neutral person who was chosen because an organiser also captains a club. */
    public boolean isNeutral() {
        return event().opening()
                .filter(chosen -> chosen.isNeutral(visitor.actor()))
                .isPresent();
    }

    /** What computing rooms answer this viewer: {@code visit.ask(ClubAnswers::new)}. */
    public <T> T ask(Function<Asker, T> answers) {
        return answers.apply(asker);
    }

    public Words words() {
        return Words.of(event());
    }

    /** A sentence for this viewer: {@link Words#say}. */
    public String say(String code, Object... namesAndValues) {
        return words().say(code, namesAndValues);
    }

    /** The same visit as anybody without a link would be answered. */
    public Visit asStranger() {
        return new Visit(ctx, hall, Visitor.STRANGER, asker.by(Viewer.PUBLIC));
    }

    /** The same visit as it would have been answered at an earlier moment. */
    public Visit asOf(Instant moment) {
        return new Visit(ctx, hall, visitor, asker.asOf(moment));
    }

    /** The club of a captain or player; pages behind such a door have one. */
    public ClubId club() {
        return viewer().club().orElseThrow(() -> new NotFound(say("page-visit.belongs-to-a-club")));
    }

    /** The club whose notes this viewer reads. */
    private Optional<ClubId> ownClub() {
        return viewer().club().filter(viewer()::isCaptainOf);
    }

    /** Ties as this viewer sees them, with when they are likely to begin. */
    public TieViews ties() {
        return new TieViews(event(), Expecting.words(this));
    }

    public String path(String name) {
        return ctx.pathParam(name);
    }

    /** The tie named in the address. */
    public Tie tie() {
        return new Address(ctx, event()).tie();
    }

    /** The rubber named in the address, if the conditions know it. */
    public RubberNo rubber() {
        return new Address(ctx, event()).rubber();
    }

    /** An id in the address; empty if it cannot be one. */
    public <T> Optional<T> readId(String name, Function<String, T> reader) {
        return new Address(ctx, event()).id(name, reader);
    }

    public Form form() {
        return Form.of(ctx);
    }

    public void show(Screen screen) {
        show(200, screen);
    }

    /** Whoever comes without a link gets the page that was made for the first of them who asked in this second. */
    public void showEverybodys(Function<Visit, Screen> page) {
        if (visitor.link().isPresent()) {
            show(page.apply(this));
            return;
        }
        String address = event().language() + " " + ctx.path() + "?"
                + Optional.ofNullable(ctx.queryString()).orElse("");
        ctx.html(hall.pages()
                .page(event().seq(), asker.directory(), event().now(), address, () -> html(page.apply(this))));
    }

    public void show(int status, Screen screen) {
        ClosedForm.answer(ctx.status(status), html(screen));
    }

    private String html(Screen screen) {
        String seen = Stamps.seal(hall.tokens(), Seen.of(event().seq(), noted));
        Map<String, Object> more = Map.of("frame", Frames.of(this, screen.title()), "forms", new Forms(seen));
        return hall.templates().html(screen.template(), screen.with(more));
    }

    public void go(String path) {
        ctx.status(Stamps.areOfAnOutbox(ctx) ? 204 : 303).header("Location", path);
    }

    /**
     * Asks for a decision with a form. Done: on to {@code next}. Not done: the page again, with every reason and all that
     * was typed.
     *
     * @param decision made only from a form without faults
     */
    public void attempt(Form form, Supplier<Decision> decision, String next, Function<Tried, Screen> again) {
        attempt(form, decision, done -> go(next), again);
    }

    public void attempt(
            Form form, Supplier<Decision> decision, Consumer<Answer.Done> then, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).decide(decision, then);
    }

    /**
     * Asks for a change among what the own club noted, with a form: as {@link #attempt}, but for the club's eyes alone. Where
     * somebody of the club noted something else meanwhile, both versions stand on the page.
     */
    public void note(Form form, Supplier<PrivateDecision> decision, String next, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).note(club(), decision, next);
    }

    /** The same with what is deleted at a player's wish. */
    public void forget(Form form, Supplier<PrivateDecision> decision, String next, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).forget(club(), decision, next);
    }

    /** The same for a club that need not be the own one; officials mark players as hurt. */
    public void noteFor(ClubId club, Form form, PrivateDecision decision, String next, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).note(club, () -> decision, next);
    }

    /** Asks for everything private to be deleted, with a form. */
    public void erase(Form form, Function<Held, Decision> decision, String next, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).erase(decision, next);
    }

    /** The page again, with what is wrong in the form. */
    public void refuse(Form form, Function<Tried, Screen> again) {
        new HandedIn(this, form, again).refuse();
    }

    /** Every reason why this would be refused now; nothing is changed by asking. */
    public List<Refusal> wouldRefuse(Decision decision) {
        return asker.wouldRefuse(decision, visitor.actor());
    }

    /** The same visit with what has happened since. */
    Visit anew() {
        return new Visit(ctx, hall, visitor, asker.anew(hall.clock().instant()));
    }

    /** What was entered since the page with this form was made; empty where the form does not say. */
    public List<String> since(Form form) {
        return new Stamps(this, form)
                .seen()
                .map(seen -> ask(DisputeAnswers::new).since(seen.seq().getAsLong()))
                .orElse(List.of());
    }
}
