package tiewright.http.answers;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Event;
import tiewright.event.KeptGame;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SameGame;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.film.CardCheck;
import tiewright.film.FilmGame;
import tiewright.ledger.Chances;
import tiewright.ledger.Ledger;
import tiewright.lineup.Aim;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.club.ClubKnows;
import tiewright.lineup.club.DayInputs;
import tiewright.lineup.club.DayLoads;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.club.OwnRecord;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.club.TriedNumbers;
import tiewright.lineup.club.WhoPlays;
import tiewright.lineup.day.DayProblem;
import tiewright.plainfiles.FilmNotes;
import tiewright.rating.Earlier;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Ratings;
import tiewright.standings.ThroughChances;

/**
 * What the computing rooms answer the captain of a club about the own squad: from the public event, and from what is private to
 * that club. Cannot be made for anybody else, nor for a link that the club has not let in.
 */
public final class ClubAnswers {
    private static final int PLAYS_TO_SEE_WHETHER_IT_MATTERS = 60;

    private final Event event;
    private final VisibleEvent visible;
    private final Ledger ledger;
    private final Worked worked;
    private final ClubId club;

    /** @throws IllegalStateException for anybody who is no captain, or whose link is not let in */
    public ClubAnswers(Asker asker) {
        this.visible = asker.event();
        this.club = visible.viewer()
                .club()
                .filter(visible.viewer()::isCaptainOf)
                .filter(own -> visible.isLetIn())
                .orElseThrow(() -> new IllegalStateException("only the captain of a club may ask this"));
        this.event = asker.whole();
        this.ledger = asker.ledger();
        this.worked = asker.worked();
    }

    /** What advice to the own captain is made from: the public event and the own club's notes. */
    public LineupInputs lineup(TieId tie, LineupProblem.Against against, long seed) {
        Freshness now =
                DayLoads.of(event, event.tie(tie).orElseThrow(), Optional.of(visible.now()), Freshness.Cost.USUAL);
        ClubKnows knows = new ClubKnows(
                club,
                ledger.privateOf(club).all(club),
                earlier(ledger, event, club),
                (prior, evidence) -> worked.strengths(prior, evidence, seed),
                WhoPlays.to(club, event, ledger.directory().stated()));
        return LineupInputs.of(event, tie, knows, against, seed)
                .asking(problem -> problem.after(now).listedBy(listing(tie, seed)))
                .marking(ledger.hurt());
    }

    /** By lot for the own club alone: what protects a secret comes from a secret. The same number draws the same again. */
    public long chance(TieId tie, long draw) {
        return Chances.of(ledger, club, tie.code() + "," + draw);
    }

    /** The same for which of equal sheets stands first, apart from the order of its pairs. */
    private long listing(TieId tie, long draw) {
        return Chances.of(ledger, club, tie.code() + ",listing," + draw);
    }

    /** The same for a press of Shuffle, apart from what proposals draw. */
    public long shuffle(TieId tie, int draw) {
        return Chances.of(ledger, club, tie.code() + ",shuffle," + draw);
    }

    /** Form and chemistry of the own squad, from the public event and the own club's notes. */
    public Ratings ratings() {
        ClubNotes notes = ledger.privateOf(club);
        Evidence evidence = Evidence.of(event, earlier(ledger, event, club), Evidence.ageing(event, notes.halfLife()));
        return Ratings.of(
                Prior.of(notes.all(club)),
                evidence,
                List.of(event.squad(club).stream().map(Player::id).toList()));
    }

    /** The aim of a tie with what each of its ends would be worth. */
    public Aim aim(TieId tie, Aim.Kind kind, long seed) {
        return switch (kind) {
            case WIN -> Aim.WIN;
            case RUBBERS -> Aim.RUBBERS;
            case QUALIFY -> {
                Map<Aim.Ended, Double> worths = worths(tie, ThroughChances.USUAL_PLAYS, seed);
                yield worths.isEmpty() ? Aim.WIN : Aim.qualify(worths);
            }
        };
    }

    private Map<Aim.Ended, Double> worths(TieId tie, int plays, long seed) {
        Map<Aim.Ended, Double> worths = new HashMap<>();
        ThroughChances.of(event, tie, club, plays, seed)
                .forEach((end, chance) -> worths.put(new Aim.Ended(end.own(), end.other(), end.lead()), chance));
        return worths;
    }

    /** The ties that the own club has ahead; one on whose end nothing hangs for going through weighs nothing. */
    public Optional<DayProblem> dayAhead(DayProblem.Wanted wanted, long seed) {
        Map<TieId, Double> weights = new HashMap<>();
        event.ties().values().stream()
                .filter(tie -> tie.has(club) && tie.pool().isPresent() && !tie.isOpened())
                .forEach(tie -> {
                    Map<Aim.Ended, Double> worths = worths(tie.id(), PLAYS_TO_SEE_WHETHER_IT_MATTERS, seed);
                    weights.put(
                            tie.id(), !worths.isEmpty() && Aim.qualify(worths).isSettled() ? 0.0 : 1.0);
                });
        return DayInputs.of(
                event,
                club,
                ledger.privateOf(club).all(club),
                tie -> lineup(tie, LineupProblem.Against.UNKNOWN, seed),
                weights,
                wanted,
                visible.now());
    }

    /** What the own players have had of the day, what was promised to them, and whether it can still be kept. */
    public PlayingDay playingDay() {
        return PlayingDay.of(event, club, ledger.privateOf(club).all(club));
    }

    /** A forecast for the own club, and how it went if that is known. */
    public record Forecasted(PrivateNote.Forecast forecast, Optional<OwnRecord.Scored> result) {}

    public List<Forecasted> forecasts() {
        return ledger.forecasts(club).stream()
                .map(forecast -> new Forecasted(forecast, OwnRecord.scored(event, club, forecast)))
                .toList();
    }

    /** How these numbers would have done on the earlier games that the own club knows; empty where there is nothing to try. */
    public Optional<TriedNumbers> tried() {
        Set<PlayerId> own = event.squad(club).stream().map(Player::id).collect(Collectors.toSet());
        return worked.tried(earlier(ledger, event, club).results(), own);
    }

    /** What the own club noted from film, in the order of the games' codes. */
    public List<FilmNotes.Game> films() {
        return FilmNotes.kept(ledger.filmsOf(club), event.conditions());
    }

    /** A filmed game held against what counts for its rubber. */
    public CardCheck checked(FilmGame game) {
        return CardCheck.within(event, game);
    }

    /** @param known it counts for everybody already: on the list, or on a card of today */
    public record OwnGame(KeptGame kept, boolean known) {}

    /** The earlier games that the own club keeps for itself, by day. */
    public List<OwnGame> pastGames() {
        List<KeptGame> kept = ledger.pastGamesOf(club);
        Set<KeptGame> more = Set.copyOf(
                SameGame.beyond(Earlier.known(event, ledger.pastGames()), kept, one -> SameGame.of(one.game())));
        return kept.stream()
                .map(game -> new OwnGame(game, !more.contains(game)))
                .toList();
    }

    /** Earlier games, everybody's and those of this club, and its film. */
    public static Earlier earlier(Ledger ledger, Event event, ClubId club) {
        return Earlier.of(
                ledger.pastGames(),
                ledger.pastGamesOf(club).stream().map(KeptGame::game).toList(),
                FilmNotes.counted(ledger.filmsOf(club), event.conditions()));
    }
}
