package tiewright.wording;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.SheetKind;
import tiewright.event.Slot;
import tiewright.scoring.Score;

/**
 * Every fact in one sentence. Hashes of links, receipts and secrets are left out; names stand as the reader of the {@link
 * Words} may read them.
 */
public final class FactWords {
    private final Words words;

    public FactWords(Words words) {
        this.words = words;
    }

    public String sentence(Fact fact) {
        return switch (fact.kind()) {
            case EVENT_DESCRIBED,
                    CONDITIONS_PUBLISHED,
                    CONDITIONS_READ,
                    CLUB_ENTERED,
                    CLUB_REMOVED,
                    PLAYER_ENTERED,
                    PLAYER_REMOVED,
                    COURT_SET,
                    CHECKED_IN,
                    LINK_ISSUED,
                    LINK_REVOKED,
                    OPENING_CHOSEN,
                    SAFETY_DESCRIBED,
                    DELETION_DATED,
                    DATA_ERASED -> setUp((SetUpFact) fact);
            case POOLS_DRAWN,
                    KNOCKOUT_DRAWN,
                    TIE_ARRANGED,
                    TIE_TIMED,
                    PLAN_PUBLISHED,
                    RUBBER_TIMED,
                    TIE_CALLED_OFF,
                    SLOT_FILLED,
                    TIE_RESTARTED,
                    SLOT_KEPT -> draw((DrawFact) fact);
            case SHEET_SEALED,
                    SHEET_RETURNED,
                    SHEET_HANDED_IN,
                    OPENING_ASKED,
                    SIDE_RULED,
                    SHEETS_OPENED,
                    PAIR_REPLACED,
                    CLUB_TOLD -> exchange((ExchangeFact) fact);
            case COURT_CALLED,
                    CALL_TAKEN_BACK,
                    CARD_ENTERED,
                    CARD_CORRECTED,
                    CARD_TAKEN_BACK,
                    PLAY_STOPPED,
                    PLAY_RESUMED -> play((PlayFact) fact);
            case CLUB_WITHDRAWN,
                    LOT_DRAWN,
                    TABLE_SIGNED,
                    EVENT_SIGNED,
                    RULING_GIVEN,
                    NOTICE_POSTED,
                    RULING_STATED,
                    NOTICE_STATED,
                    NOTICE_TOLD,
                    HEAT_DECIDED -> official((OfficialFact) fact);
            case CORRECTION_DECIDED, SIGNATURE_WITHDRAWN, CASE_RULED, PROTEST_MADE, PROTEST_DECIDED ->
                dispute((OfficialFact) fact);
        };
    }

    private String setUp(SetUpFact fact) {
        if (fact instanceof SetUpFact.EventDescribed one) {
            return say(fact, "", "name", one.name(), "date", one.date(), "venue", one.venue(), "starts", one.starts());
        } else if (fact instanceof SetUpFact.ConditionsPublished one) {
            return one.ruling().isPresent()
                    ? say(
                            fact,
                            ".by-ruling",
                            "version",
                            one.version(),
                            "ruling",
                            one.ruling().getAsInt())
                    : say(fact, "", "version", one.version());
        } else if (fact instanceof SetUpFact.ConditionsRead one) {
            return say(fact, "", "club", one.club(), "version", one.version());
        } else if (fact instanceof SetUpFact.ClubEntered one) {
            return say(fact, "", "name", one.name(), "code", one.club().code());
        } else if (fact instanceof SetUpFact.ClubRemoved one) {
            return say(fact, "", "club", one.club());
        } else if (fact instanceof SetUpFact.CourtSet one) {
            return say(fact, one.usable() ? "" : ".out", "court", one.court());
        } else if (fact instanceof SetUpFact.SafetyDescribed one) {
            return say(
                    fact,
                    "",
                    "firstAid",
                    one.firstAid(),
                    "defibrillator",
                    one.defibrillator(),
                    "emergency",
                    one.emergency());
        } else if (fact instanceof SetUpFact.OpeningChosen one) {
            String how = !one.organiserIsCaptain() ? "" : one.neutral().isPresent() ? ".person" : ".automatic";
            return say(fact, how, "neutral", one.neutral());
        } else if (fact instanceof SetUpFact.DeletionDated one) {
            return say(fact, "." + one.names().code(), "date", DeletionWords.day(one.date()));
        } else if (fact instanceof SetUpFact.DataErased one) {
            return say(fact, "", "what", DeletionWords.counts(one.counts()));
        }
        return person(fact);
    }

    private String person(SetUpFact fact) {
        if (fact instanceof SetUpFact.PlayerEntered one) {
            return say(fact, "", "player", one.player(), "club", one.club());
        } else if (fact instanceof SetUpFact.PlayerRemoved one) {
            return say(fact, "", "player", one.player());
        } else if (fact instanceof SetUpFact.CheckedIn one) {
            return say(fact, one.present() ? "" : ".absent", "player", one.player());
        } else if (fact instanceof SetUpFact.LinkIssued one) {
            return say(fact, "", "link", one.link(), "role", one.role().code(), "label", one.label());
        }
        return say(fact, "", "link", ((SetUpFact.LinkRevoked) fact).link());
    }

    private String draw(DrawFact fact) {
        if (fact instanceof DrawFact.PoolsDrawn one) {
            return say(fact, "", "pools", one.pools().keySet(), "seed", one.spokenSeed(), "witness", one.witness());
        } else if (fact instanceof DrawFact.KnockoutDrawn one) {
            return say(fact, "", "seed", one.spokenSeed(), "witness", one.witness());
        } else if (fact instanceof DrawFact.TieArranged one) {
            return say(fact, "", "tie", one.tie(), "home", slot(one.home()), "away", slot(one.away()));
        } else if (fact instanceof DrawFact.TieTimed one) {
            return say(fact, "", "tie", one.tie(), "start", orNothing(one.start()), "court", orNothing(one.court()));
        }
        if (fact instanceof DrawFact.TieRestarted one) {
            return say(
                    fact,
                    "",
                    "tie",
                    one.tie(),
                    "home",
                    orNothing(one.home()),
                    "away",
                    orNothing(one.away()),
                    "ruling",
                    one.ruling());
        } else if (fact instanceof DrawFact.SlotKept one) {
            return say(fact, "", "club", one.club(), "tie", one.tie(), "ruling", one.ruling());
        }
        return fact instanceof DrawFact.SlotFilled one
                ? say(fact, "", "club", one.club(), "tie", one.tie())
                : plan(fact);
    }

    private String plan(DrawFact fact) {
        if (fact instanceof DrawFact.PlanPublished one) {
            return say(
                    fact, "", "version", one.version(), "notice", one.notice(), "reason", one.reason(), "by", one.by());
        } else if (fact instanceof DrawFact.RubberTimed one) {
            return say(
                    fact,
                    one.umpires().isPresent() ? ".umpired" : "",
                    "tie",
                    one.tie(),
                    "rubber",
                    rubber(one.rubber()),
                    "start",
                    one.start(),
                    "court",
                    one.court(),
                    "umpires",
                    one.umpires().<Object>map(club -> club).orElse(""));
        }
        DrawFact.TieCalledOff one = (DrawFact.TieCalledOff) fact;
        return say(fact, "", "tie", one.tie(), "ruling", one.ruling());
    }

    private String exchange(ExchangeFact fact) {
        String what = what(fact.exchange());
        if (fact instanceof ExchangeFact.SheetSealed one) {
            return say(fact, "", "club", one.club(), "what", what);
        } else if (fact instanceof ExchangeFact.SheetReturned one) {
            return say(fact, "", "club", one.club(), "what", what, "reason", one.reason());
        } else if (fact instanceof ExchangeFact.SheetHandedIn one) {
            return say(fact, "", "club", one.club(), "what", what);
        } else if (fact instanceof ExchangeFact.OpeningAsked one) {
            return say(fact, "", "club", one.club(), "what", what);
        } else if (fact instanceof ExchangeFact.SideRuled one) {
            return say(
                    fact,
                    one.forfeited() ? ".forfeited" : "",
                    "club",
                    one.club(),
                    "what",
                    what,
                    "ruling",
                    one.ruling());
        } else if (fact instanceof ExchangeFact.PairReplaced one) {
            return say(
                    fact,
                    "",
                    "club",
                    one.club(),
                    "what",
                    what,
                    "rubber",
                    one.rubber(),
                    "door",
                    one.door(),
                    "by",
                    one.approvedBy());
        } else if (fact instanceof ExchangeFact.ClubTold one) {
            return say(fact, "", "club", one.club(), "what", what);
        }
        return say(fact, "", "what", what);
    }

    private String play(PlayFact fact) {
        if (fact instanceof PlayFact.CourtCalled one) {
            return say(fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()), "court", one.court());
        } else if (fact instanceof PlayFact.CallTakenBack one) {
            return say(fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()), "reason", one.reason());
        } else if (fact instanceof PlayFact.CardEntered one) {
            return say(
                    fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()), "score", score(one.games(), one.how()));
        } else if (fact instanceof PlayFact.CardCorrected one) {
            return say(
                    fact,
                    "",
                    "tie",
                    one.tie(),
                    "rubber",
                    rubber(one.rubber()),
                    "score",
                    score(one.games(), one.how()),
                    "reason",
                    one.reason());
        }
        if (fact instanceof PlayFact.PlayStopped one) {
            return say(fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()));
        } else if (fact instanceof PlayFact.PlayResumed one) {
            return say(fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()));
        }
        PlayFact.CardTakenBack one = (PlayFact.CardTakenBack) fact;
        return say(fact, "", "tie", one.tie(), "rubber", rubber(one.rubber()), "reason", one.reason());
    }

    private String official(OfficialFact fact) {
        if (fact instanceof OfficialFact.ClubWithdrawn one) {
            String treatment = plain("treatment." + one.treatment().code());
            return say(fact, "", "club", one.club(), "ruling", one.ruling(), "treatment", treatment);
        } else if (fact instanceof OfficialFact.LotDrawn one) {
            return say(fact, "", "pool", one.pool(), "order", one.order(), "witness", one.witness());
        } else if (fact instanceof OfficialFact.TableSigned one) {
            return say(fact, "", "pool", one.pool(), "order", one.order(), "by", one.by());
        } else if (fact instanceof OfficialFact.EventSigned one) {
            return say(fact, "", "order", one.order(), "by", one.by());
        } else if (fact instanceof OfficialFact.RulingGiven one) {
            return ruling(fact, one.stated());
        } else if (fact instanceof OfficialFact.RulingStated one) {
            return ruling(fact, one);
        } else if (fact instanceof OfficialFact.NoticeStated one) {
            return say(fact, "", "number", one.number(), "text", one.text());
        }
        return fact instanceof OfficialFact.NoticePosted one
                ? say(fact, "", "number", one.number(), "text", one.text())
                : told(fact);
    }

    private String ruling(Fact fact, OfficialFact.RulingStated one) {
        return say(
                fact,
                "",
                "number",
                one.number(),
                "about",
                one.about(),
                "ruling",
                one.ruling(),
                "reason",
                one.reason(),
                "by",
                one.by());
    }

    private String told(OfficialFact fact) {
        if (fact instanceof OfficialFact.NoticeTold one) {
            return say(fact, one.told() ? "" : ".taken-back", "notice", one.notice(), "club", one.club());
        }
        OfficialFact.HeatDecided one = (OfficialFact.HeatDecided) fact;
        return say(
                fact,
                "",
                "measure",
                plain("heat." + one.measure()),
                "degrees",
                degrees(one.tenths()),
                "tier",
                plain("heat.tier." + one.tier()),
                "decision",
                one.decision(),
                "by",
                one.by());
    }

    private static String degrees(int tenths) {
        return java.math.BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    private String dispute(OfficialFact fact) {
        if (fact instanceof OfficialFact.CorrectionDecided one) {
            return say(
                    fact,
                    "." + one.choice().code(),
                    "tie",
                    one.tie(),
                    "rubber",
                    rubber(one.rubber()),
                    "score",
                    score(one.games(), one.how()),
                    "ruling",
                    one.ruling());
        } else if (fact instanceof OfficialFact.SignatureWithdrawn one) {
            return one.pool().isPresent()
                    ? say(fact, "", "pool", one.pool().get(), "ruling", one.ruling())
                    : say(fact, ".event", "ruling", one.ruling());
        } else if (fact instanceof OfficialFact.CaseRuled one) {
            return say(fact, "." + one.penalty().code(), "tie", one.tie(), "club", one.club(), "ruling", one.ruling());
        } else if (fact instanceof OfficialFact.ProtestMade one) {
            return say(fact, "", "number", one.number(), "club", one.club(), "text", one.text(), "by", one.by());
        }
        OfficialFact.ProtestDecided one = (OfficialFact.ProtestDecided) fact;
        return say(fact, one.upheld() ? ".upheld" : ".dismissed", "number", one.number(), "ruling", one.ruling());
    }

    private String say(Fact fact, String variant, Object... namesAndValues) {
        Map<String, Object> data = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            data.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return words.sentence("facts." + fact.kind().code() + variant, data);
    }

    private String plain(String key) {
        return words.sentence("facts." + key, Map.of());
    }

    private String what(ExchangeId exchange) {
        String key = exchange.kind() == SheetKind.DECIDER ? "facts.decider" : "facts.sheets";
        return words.sentence(key, Map.of("tie", exchange.tie()));
    }

    private String rubber(Optional<RubberNo> rubber) {
        return rubber.map(this::rubber).orElseGet(() -> plain("whole-tie"));
    }

    private String rubber(RubberNo rubber) {
        return rubber.isDecider() ? plain("the-decider") : words.sentence("facts.rubber", Map.of("rubber", rubber));
    }

    private String slot(Slot slot) {
        return slot.club()
                .map(words::said)
                .orElseGet(() -> slot.from().map(Object::toString).orElse(""));
    }

    private String orNothing(Optional<?> value) {
        return value.map(words::said).orElseGet(() -> plain("nothing"));
    }

    private String score(List<Score> games, How how) {
        String points =
                games.stream().map(game -> game.home() + "-" + game.away()).collect(Collectors.joining(", "));
        return how == How.PLAYED ? points : (points + " " + plain("how." + how.code())).strip();
    }
}
