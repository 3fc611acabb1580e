package tiewright.http.visit;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Held;
import tiewright.event.Link;
import tiewright.event.PrivateDecision;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.Viewer;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Asker;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Forms;
import tiewright.ledger.Answer;
import tiewright.ledger.PrivateAnswer;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.wording.NoteWords;
import tiewright.wording.Words;

/** One request: who asks, what that viewer may know, and the ways to answer. */
public final class Visit {
    private static final String SEEN = "seen";
    private static final Set<String> ADDED = Set.of("key", SEEN, "device-time");
    private static final int NOT_DONE = 422;
    private static final int STALE = 409;

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
        return viewer().club().orElseThrow(() -> new NotFound("This page belongs to a club."));
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
        return readId("tie", TieId::of)
                .flatMap(event()::tie)
                .orElseThrow(
                        () -> new NotFound("There is no tie \"" + path("tie") + "\". The list of ties has them all."));
    }

    /** The rubber named in the address, if the conditions know it. */
    public RubberNo rubber() {
        return RubberNo.parse(path("rubber"))
                .filter(rubber -> rubber.isDecider()
                        || rubber.number() <= event().conditions().rubbers())
                .orElseThrow(() -> new NotFound("A tie has no rubber \"" + path("rubber") + "\"."));
    }

    /** An id in the address; empty if it cannot be one. */
    public <T> Optional<T> readId(String name, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(path(name)));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
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
        ctx.status(status).html(html(screen));
    }

    private String html(Screen screen) {
        String seen = hall.tokens().close(SEEN, Seen.of(event().seq(), noted).text());
        Map<String, Object> more = Map.of("frame", Frames.of(this, screen.title()), "forms", new Forms(seen));
        return hall.templates().html(screen.template(), screen.with(more));
    }

    public void go(String path) {
        ctx.status(303).header("Location", path);
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
            Form form,
            Supplier<Decision> decision,
            java.util.function.Consumer<Answer.Done> then,
            Function<Tried, Screen> again) {
        if (!form.isClean()) {
            refuse(NOT_DONE, form, "frame.not-done-yet", form.faults(), again);
            return;
        }
        answered(form, hall.ledger().decide(request(form), decision.get()), then, again);
    }

    /**
     * Asks for a change among what the own club noted, with a form: as {@link #attempt}, but for the club's eyes alone. Where
     * somebody of the club noted something else meanwhile, both versions stand on the page.
     */
    public void note(Form form, Supplier<PrivateDecision> decision, String next, Function<Tried, Screen> again) {
        note(form, club(), hall.ledger()::decide, decision, next, again);
    }

    /** The same with what is deleted at a player's wish. */
    public void forget(Form form, Supplier<PrivateDecision> decision, String next, Function<Tried, Screen> again) {
        note(form, club(), hall.ledger()::forget, decision, next, again);
    }

    /** The same for a club that need not be the own one; officials mark players as hurt. */
    public void noteFor(ClubId club, Form form, PrivateDecision decision, String next, Function<Tried, Screen> again) {
        note(form, club, hall.ledger()::decide, () -> decision, next, again);
    }

    private void note(
            Form form,
            ClubId club,
            BiFunction<PrivateRequest, PrivateDecision, PrivateAnswer> door,
            Supplier<PrivateDecision> decision,
            String next,
            Function<Tried, Screen> again) {
        if (!form.isClean()) {
            refuse(form, again);
            return;
        }
        PrivateRequest request = new PrivateRequest(
                club,
                own(keyOf(form), form),
                visitor.actor(),
                seen(form).map(Seen::noted).orElse(OptionalLong.empty()));
        PrivateAnswer answer = door.apply(request, decision.get());
        if (answer instanceof PrivateAnswer.Refused refused) {
            refuse(NOT_DONE, form, "frame.not-done", refused.reasons(), again);
        } else if (answer instanceof PrivateAnswer.Stale stale) {
            refuse(STALE, form, "frame.club-noted", bothVersions(stale), again);
        } else {
            go(next);
        }
    }

    private List<Refusal> bothVersions(PrivateAnswer.Stale stale) {
        NoteWords said = new NoteWords(words());
        return stale.clashes().stream()
                .map(clash -> Refusal.of("notes.changed")
                        .with("who", clash.by())
                        .with("at", clash.at())
                        .with("what", said.about(clash.subject()))
                        .with("stands", said.said(clash.stands()))
                        .with("asked", said.said(clash.asked())))
                .toList();
    }

    /** Asks for everything private to be deleted, with a form. */
    public void erase(Form form, Function<Held, Decision> decision, String next, Function<Tried, Screen> again) {
        answered(form, hall.ledger().erase(request(form), decision), done -> go(next), again);
    }

    private void answered(
            Form form, Answer answer, java.util.function.Consumer<Answer.Done> then, Function<Tried, Screen> again) {
        if (answer instanceof Answer.Done done) {
            then.accept(done);
        } else if (answer instanceof Answer.Refused refused) {
            refuse(NOT_DONE, form, "frame.not-done", refused.reasons(), again);
        } else {
            refuse(STALE, form, "frame.changed", List.of(Refusal.of("form.stale")), again);
        }
    }

    /** The page again, with what is wrong in the form. */
    public void refuse(Form form, Function<Tried, Screen> again) {
        refuse(NOT_DONE, form, "frame.not-done-yet", form.faults(), again);
    }

    /** Every reason why this would be refused now; nothing is changed by asking. */
    public List<Refusal> wouldRefuse(Decision decision) {
        return asker.wouldRefuse(decision, visitor.actor());
    }

    private void refuse(int status, Form form, String title, List<Refusal> reasons, Function<Tried, Screen> again) {
        Visit now = status == STALE
                ? new Visit(ctx, hall, visitor, asker.anew(hall.clock().instant()))
                : this;
        Words words = now.words();
        List<tiewright.http.pieces.Refusal.Problem> problems = reasons.stream()
                .map(reason -> new tiewright.http.pieces.Refusal.Problem(words.sentence(reason), reason.field()))
                .distinct()
                .toList();
        now.show(status, again.apply(Tried.refused(form, words.say(title), problems)));
    }

    private Request request(Form form) {
        return new Request(
                own(keyOf(form), form),
                visitor.actor(),
                deviceTime(form),
                seen(form).map(Seen::seq).orElse(OptionalLong.empty()));
    }

    private static String keyOf(Form form) {
        return form.text("key").isEmpty() ? new Forms("").key() : form.text("key");
    }

    /**
     * The form's key, good for this person, address and content alone: a form that was changed after going back is not the
     * one that was answered, and no chosen key can pass for the key of somebody else or of the service itself.
     */
    private String own(String key, Form form) {
        String whole =
                String.join("\n", key, visitor.link().map(Link::name).orElse(""), ctx.path(), form.content(ADDED));
        return "form/" + Tokens.hash(whole).substring(0, 40);
    }

    /** What was entered since the page with this form was made; empty where the form does not say. */
    public List<String> since(Form form) {
        return seen(form)
                .map(seen -> ask(DisputeAnswers::new).since(seen.seq().getAsLong()))
                .orElse(List.of());
    }

    private Optional<Seen> seen(Form form) {
        return hall.tokens().open(SEEN, form.text(SEEN)).map(Seen::parse);
    }

    private static Optional<Instant> deviceTime(Form form) {
        try {
            return form.maybe("device-time").map(Instant::parse);
        } catch (java.time.format.DateTimeParseException wrongClock) {
            return Optional.empty();
        }
    }
}
