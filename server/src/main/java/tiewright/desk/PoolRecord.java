package tiewright.desk;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.standings.Row;

/**
 * Orders clubs of different pools that nothing else parts: by place in the pool; then, because pools differ in size, by
 * difference of rubbers for each tie, difference of points for each tie; then by code. A club without a pool comes last.
 */
final class PoolRecord implements Comparator<ClubId> {
    private final Map<ClubId, Integer> places = new LinkedHashMap<>();
    private final Map<ClubId, Row> rows = new LinkedHashMap<>();

    private PoolRecord() {}

    static PoolRecord of(Event event) {
        PoolRecord record = new PoolRecord();
        for (String pool : event.pools().keySet()) {
            List<Row> rows = PoolEnd.of(event, pool).table().rows();
            rows.forEach(row -> record.rows.put(row.club(), row));
            rows.forEach(row -> record.places.put(row.club(), row.place()));
        }
        for (OfficialFact.TableSigned table : event.signedTables().values()) {
            for (int i = 0; i < table.order().size(); i++) {
                record.places.put(table.order().get(i), i + 1);
            }
        }
        return record;
    }

    boolean has(ClubId club) {
        return places.containsKey(club);
    }

    Collection<ClubId> clubs() {
        return places.keySet();
    }

    @Override
    public int compare(ClubId one, ClubId other) {
        int byPlace = Integer.compare(
                places.getOrDefault(one, Integer.MAX_VALUE), places.getOrDefault(other, Integer.MAX_VALUE));
        if (byPlace != 0) {
            return byPlace;
        }
        int byRubbers = Double.compare(rubbers(other), rubbers(one));
        int byPoints = byRubbers != 0 ? byRubbers : Double.compare(points(other), points(one));
        return byPoints != 0 ? byPoints : one.compareTo(other);
    }

    private double rubbers(ClubId club) {
        Row row = rows.get(club);
        return row == null ? 0 : (double) (row.rubbersWon() - row.rubbersLost()) / ties(row);
    }

    private double points(ClubId club) {
        Row row = rows.get(club);
        return row == null ? 0 : (double) (row.pointsFor() - row.pointsAgainst()) / ties(row);
    }

    private static int ties(Row row) {
        return Math.max(1, row.tiesWon() + row.tiesDrawn() + row.tiesLost());
    }
}
