package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How much less than the best of all placements the rows of a layout hold. Roofs, obstacles and panels are whole cells of a
 * raster, without walkways, headers and distances from edges: then every placement can be pushed left and down until all of
 * it stands on the raster, so that the most of the raster is the most there is of panels along and across.
 */
class LayoutGapTest {

    private static final int ROOFS = 200;

    /** A cell of the raster, m. */
    private static final double CELL_M = 0.6;

    /** A panel of 1.2 m by 2.4 m. */
    private static final int WIDE = 2;

    private static final int LONG = 4;

    @Test
    void theGapIsTheDocumented() throws IOException {
        PanelRules rules = new PanelRules(
                WIDE * CELL_M, new PanelRules.Fixed(List.of(LONG * CELL_M)), PanelRules.HeaderEnds.ONE, 0, 1000, 0, 0);
        int held = 0;
        int best = 0;
        int asMany = 0;
        int most = 0;
        for (int seed = 0; seed < ROOFS; seed++) {
            Raster roof = new Raster(new Random(seed));
            int laid = RoofLayout.most(List.of(roof.surface()), rules, new Laying.Mats())
                    .panels();
            int possible = roof.most();
            assertThat(laid).as("roof %d", seed).isLessThanOrEqualTo(possible);
            held += laid;
            best += possible;
            asMany += laid == possible ? 1 : 0;
            most = Math.max(most, possible - laid);
        }
        DocBlock.check(
                "roof.md",
                "gap",
                String.format(Locale.ROOT, """
                        On %d invented roofs rows hold %d panels and the best of all placements %d, %.1f %% more;
                        on %d roofs rows hold as many, and on none more than %d fewer.
                        """, ROOFS, held, best, 100.0 * (best - held) / held, asMany, most));
    }

    /** The search itself: a square of four cells holds two, one of six four around a hole of two by two. */
    @Test
    void theMostOfARasterIsTheMostByHand() {
        assertThat(new Raster(4, 4).most()).isEqualTo(2);
        assertThat(new Raster(3, 4).most()).isEqualTo(1);
        assertThat(new Raster(6, 6).most()).isEqualTo(4);
        assertThat(new Raster(8, 6).most()).isEqualTo(6);
    }

    /** A roof of cells, those that are free true. */
    private static final class Raster {

        private final boolean[][] free;
        private final Outline outline;
        private final List<Obstacle> obstacles = new ArrayList<>();

        /** A rectangle. */
        Raster(int length, int width) {
            this.free = new boolean[width][length];
            this.outline = Outline.rectangle(length * CELL_M, width * CELL_M);
            fill(0, 0, length, width, true);
        }

        /** A rectangle with a corner cut out and up to three obstacles. */
        Raster(Random random) {
            int length = 8 + random.nextInt(10);
            int width = 7 + random.nextInt(5);
            int cutLength = random.nextInt(length / 2 + 1);
            int cutWidth = random.nextInt(width / 2 + 1);
            this.free = new boolean[width][length];
            fill(0, 0, length, width, true);
            fill(length - cutLength, width - cutWidth, cutLength, cutWidth, false);
            boolean angle = cutLength > 0 && cutWidth > 0;
            this.outline = angle
                    ? new Outline(List.of(
                            at(0, 0),
                            at(length, 0),
                            at(length, width - cutWidth),
                            at(length - cutLength, width - cutWidth),
                            at(length - cutLength, width),
                            at(0, width)))
                    : Outline.rectangle(length * CELL_M, width * CELL_M);
            for (int i = random.nextInt(4); i > 0; i--) {
                int size = 1 + random.nextInt(2);
                int x = random.nextInt(length - size);
                int y = random.nextInt(width - size);
                fill(x, y, size, size, false);
                RoofPoint middle = new RoofPoint((x + size / 2.0) * CELL_M, (y + size / 2.0) * CELL_M);
                obstacles.add(
                        new Obstacle("obstacle", Obstacle.Block.around(middle, size * CELL_M, size * CELL_M), 0, 0));
            }
        }

        Surface surface() {
            return new Surface("roof", outline, 180, 0, 6, 0, 0, obstacles);
        }

        private static RoofPoint at(int x, int y) {
            return new RoofPoint(x * CELL_M, y * CELL_M);
        }

        private void fill(int x, int y, int length, int width, boolean value) {
            for (int row = y; row < y + width; row++) {
                for (int column = x; column < x + length; column++) {
                    free[row][column] = value;
                }
            }
        }

        /** Cell by cell: leave it, or begin a panel there along or across; of what is taken ahead the most is kept. */
        int most() {
            int across = free.length;
            int along = free[0].length;
            Map<Long, Integer> best = new HashMap<>(Map.of(0L, 0));
            for (int column = 0; column < along; column++) {
                for (int row = 0; row < across; row++) {
                    Map<Long, Integer> next = new HashMap<>();
                    for (Map.Entry<Long, Integer> state : best.entrySet()) {
                        long taken = state.getKey();
                        next.merge(taken >>> 1, state.getValue(), Math::max);
                        for (int turn = 0; turn < 2; turn++) {
                            int deep = turn == 0 ? LONG : WIDE;
                            int high = turn == 0 ? WIDE : LONG;
                            long panel = panel(deep, high, across);
                            if ((taken & panel) == 0 && isFree(column, row, deep, high)) {
                                next.merge((taken | panel) >>> 1, state.getValue() + 1, Math::max);
                            }
                        }
                    }
                    best = next;
                }
            }
            return best.values().stream().mapToInt(Integer::intValue).max().orElseThrow();
        }

        /** The cells of a panel that begins at the lowest bit, column after column. */
        private static long panel(int deep, int high, int across) {
            long bits = 0;
            for (int column = 0; column < deep; column++) {
                bits |= ((1L << high) - 1) << (column * across);
            }
            return bits;
        }

        private boolean isFree(int column, int row, int deep, int high) {
            if (column + deep > free[0].length || row + high > free.length) {
                return false;
            }
            for (int y = row; y < row + high; y++) {
                for (int x = column; x < column + deep; x++) {
                    if (!free[y][x]) {
                        return false;
                    }
                }
            }
            return true;
        }
    }
}
