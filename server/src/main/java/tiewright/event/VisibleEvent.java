package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import tiewright.conditions.Conditions;

/**
 * What one viewer may know of the event at one moment. Pages and advice are made from this and never hold {@link Event}.
 * What is not here cannot leak: the exchange shows "in" or "not in", receipts come out at the deadline, sheets with the
 * opening, links to the organiser only.
 */
public final class VisibleEvent {
    private final Event event;
    private final Directory directory;
    private final Viewer viewer;
    private final Instant now;
    private final String language;
    /** A page asks often how far the same tie has come. */
    private final Map<TieId, TieProgress> progress = new ConcurrentHashMap<>();

    private VisibleEvent(Event event, Directory directory, Viewer viewer, Instant now, String language) {
        this.event = event;
        this.directory = directory;
        this.viewer = viewer;
        this.now = now;
        this.language = language;
    }

    public static VisibleEvent of(Event event, Directory directory, Viewer viewer, Instant now) {
        return new VisibleEvent(event, directory, viewer, now, "en");
    }

    /** The same for somebody who reads another language. */
    public VisibleEvent in(String language) {
        return new VisibleEvent(event, directory, viewer, now, language);
    }

    /** The language in which the viewer reads, such as {@code en}. */
    public String language() {
        return language;
    }

    public Viewer viewer() {
        return viewer;
    }

    public Instant now() {
        return now;
    }

    /** The last fact this viewer may notice: what a form made now has seen. */
    public long seq() {
        return event.reach().seq(viewer);
    }

    /** The version that pages and prints show. */
    public int version() {
        return event.reach().count();
    }

    public Optional<SetUpFact.EventDescribed> about() {
        return event.about();
    }

    public ZoneId zone() {
        return event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
    }

    /** A moment as the hall's clock shows it. */
    public LocalTime clock(Instant moment) {
        return LocalTime.ofInstant(moment, zone());
    }

    public Conditions conditions() {
        return event.conditions();
    }

    public int conditionsVersion() {
        return event.conditionsVersion();
    }

    public boolean isFrozen() {
        return event.isFrozen();
    }

    /** The version that the club's captain ticked, for that captain and officials; 0 = none. */
    public int conditionsRead(ClubId club) {
        return viewer.role().isOfficial() || viewer.isCaptainOf(club)
                ? event.conditionsRead().getOrDefault(club, 0)
                : 0;
    }

    public Collection<Club> clubs() {
        return event.clubs().values();
    }

    public Optional<Club> club(ClubId id) {
        return event.club(id);
    }

    /** The club's name, or its code when it is no longer entered. */
    public String clubName(ClubId id) {
        return event.club(id).map(Club::name).orElse(id.code());
    }

    public Collection<Player> players() {
        return new SeenSquads(event, viewer).all();
    }

    public Optional<Player> player(PlayerId id) {
        return new SeenSquads(event, viewer).player(id);
    }

    public List<Player> squad(ClubId club) {
        return new SeenSquads(event, viewer).squad(club, this::name);
    }

    /** The name this viewer may read: full for the own club and officials, minors shortened for everybody else. */
    public String name(PlayerId player) {
        boolean near = viewer.role().isOfficial()
                || event.player(player).filter(p -> viewer.isOf(p.club())).isPresent();
        return near ? directory.name(player) : directory.publicName(player, year());
    }

    private int year() {
        return event.about().map(about -> about.date().getYear()).orElse(0); // undated: all are minors
    }

    public Collection<Court> courts() {
        return event.courts().values();
    }

    public Collection<Tie> ties() {
        return event.ties().values();
    }

    public Optional<Tie> tie(TieId id) {
        return event.tie(id);
    }

    public List<Tie> tiesOf(ClubId club) {
        return event.ties().values().stream().filter(tie -> tie.has(club)).toList();
    }

    public TieProgress progress(Tie tie) {
        return progress.computeIfAbsent(tie.id(), id -> event.progress(tie));
    }

    public Map<String, List<ClubId>> pools() {
        return event.pools();
    }

    public List<Tie> tiesOfPool(String pool) {
        return event.tiesOfPool(pool);
    }

    public Optional<DrawFact.PoolsDrawn> draw() {
        return event.draw();
    }

    public Optional<DrawFact.KnockoutDrawn> knockoutDraw() {
        return event.knockoutDraw();
    }

    /** A club of the tie withdrew: it is in no list of what is to come. */
    public boolean isGone(Tie tie) {
        return event.isGone(tie);
    }

    /** Something of the tie is still to come: it is not over, and no club of it withdrew. */
    public boolean goesOn(Tie tie) {
        return event.goesOn(tie);
    }

    public Map<ClubId, OfficialFact.ClubWithdrawn> withdrawals() {
        return event.withdrawals();
    }

    public Map<String, List<OfficialFact.LotDrawn>> lots() {
        return event.lots();
    }

    public Map<String, OfficialFact.TableSigned> signedTables() {
        return event.signedTables();
    }

    public Optional<OfficialFact.EventSigned> signed() {
        return event.signed();
    }

    public List<OfficialFact.RulingStated> rulings() {
        return event.rulings();
    }

    public List<Event.Posted> notices() {
        return event.notices();
    }

    public OrderOfPlay order() {
        return event.order();
    }

    /** What was decided in heat, for officials. */
    public List<Event.Heat> heat() {
        return viewer.role().isOfficial() ? event.heat() : List.of();
    }

    /** The published start of a tie as a moment; empty while it has none. */
    public Optional<Instant> startsAt(Tie tie) {
        return event.startsAt(tie);
    }

    /** Where help is; for everybody. */
    public SetUpFact.SafetyDescribed safety() {
        return event.safety();
    }

    /** When private data go, and whether they have gone; for everybody. */
    public Deletion deletion() {
        return event.deletion();
    }

    /** What went wrong and how it was decided; the same for everybody. */
    public Disputes disputes() {
        return event.disputes();
    }

    public Optional<SetUpFact.OpeningChosen> opening() {
        return event.opening();
    }

    /** Links without their secrets: all for officials, the own club's for its captain. */
    public List<Link> links() {
        return event.links().values().stream()
                .filter(link -> viewer.role().isOfficial()
                        || link.club().filter(viewer::isCaptainOf).isPresent())
                .toList();
    }

    /** The captains' links of a club, for officials and its captain. */
    public ClubLinks linksOf(ClubId club) {
        return ClubLinks.of(links(), club);
    }

    private Optional<Link> link() {
        return viewer.link().map(event.links()::get);
    }

    /** Whether this viewer's link reads what its club keeps for itself. */
    public boolean isLetIn() {
        return link().filter(link -> event.entries().isLetIn(link, now)).isPresent();
    }

    /** Whether this viewer's link was there when the own club sealed the sheet that is in, and so may read it. */
    public boolean mayRead(ExchangeId exchange) {
        return link().filter(link -> event.mayRead(link, exchange, now)).isPresent();
    }

    /** The link that sealed a sheet in place of one it cannot have read, while no older link has confirmed; for the own captain. */
    public Optional<Link> unconfirmed(ExchangeId exchange) {
        return viewer.club()
                .filter(viewer::isCaptainOf)
                .flatMap(club -> event.tie(exchange.tie()).flatMap(tie -> tie.sideOf(club)))
                .filter(side -> !event.exchange(exchange).isOpened())
                .flatMap(side -> event.exchange(exchange).side(side).sealings().inPlace())
                .filter(Sealings.InPlace::isUnconfirmed)
                .flatMap(Sealings.InPlace::by)
                .map(event.links()::get);
    }

    /** The moment by which sheets must be sealed; empty while the tie has no published start. */
    public Optional<Instant> deadline(ExchangeId exchange) {
        return Deadlines.of(event, exchange);
    }

    /** The exchange as this viewer may see it. */
    public VisibleExchange exchange(ExchangeId id) {
        return VisibleExchange.of(event, id, viewer, now);
    }
}
