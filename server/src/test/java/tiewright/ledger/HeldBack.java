package tiewright.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A file as the disk surely holds it, and what was written to it since that the system may still hold back. */
final class HeldBack {
    /** What a disk writes whole or not at all. */
    private static final int SECTOR = 512;

    private byte[] sure;
    private final List<Change> since = new ArrayList<>();

    /** Bytes written there, or, without any, the file cut to that length. */
    private record Change(long at, byte[] bytes, boolean isCut) {}

    HeldBack(byte[] sure) {
        this.sure = sure;
    }

    synchronized void write(long at, byte[] bytes) {
        since.add(new Change(at, bytes, false));
    }

    synchronized void truncate(long size) {
        since.add(new Change(size, new byte[0], true));
    }

    synchronized void force() {
        for (Change change : since) {
            sure = change.isCut ? Arrays.copyOf(sure, (int) change.at) : written(sure, change, 0, change.bytes.length);
        }
        since.clear();
    }

    /**
     * What is found after the power is back: of the changes since it was forced none, some, all but a part of the last one, or
     * all but a part of each. The system may write them in any order.
     */
    synchronized byte[] afterTheCut(Random random) {
        int kind = random.nextInt(4);
        byte[] found = sure.clone();
        for (int i = 0; i < since.size(); i++) {
            Change change = since.get(i);
            boolean isLast = i == since.size() - 1;
            boolean isKept = kind == 1 ? !isLast : kind > 1 && random.nextBoolean();
            if (change.isCut) {
                found = isKept ? Arrays.copyOf(found, (int) change.at) : found;
            } else if (kind == 3 || kind == 1 && isLast) {
                found = butOneSector(found, change, random);
            } else if (isKept) {
                found = written(found, change, 0, change.bytes.length);
            }
        }
        return found;
    }

    private static byte[] butOneSector(byte[] file, Change change, Random random) {
        byte[] found = file;
        int missing = SECTOR * random.nextInt((change.bytes.length + SECTOR - 1) / SECTOR);
        for (int from = 0; from < change.bytes.length; from += SECTOR) {
            if (from != missing) {
                found = written(found, change, from, Math.min(SECTOR, change.bytes.length - from));
            }
        }
        return found;
    }

    /** In place where it is long enough. */
    private static byte[] written(byte[] file, Change change, int from, int length) {
        int end = Math.toIntExact(change.at + from + length);
        byte[] found = end > file.length ? Arrays.copyOf(file, end) : file;
        System.arraycopy(change.bytes, from, found, (int) change.at + from, length);
        return found;
    }
}
