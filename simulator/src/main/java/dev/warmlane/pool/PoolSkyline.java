package dev.warmlane.pool;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.irradiance.Wall;
import dev.warmlane.site.Horizon;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What hides sky from a pool.
 *
 * @param horizon what stands so far away that it looks alike from everywhere in the pool
 * @param screens what stands near
 */
public record PoolSkyline(Horizon horizon, List<Screen> screens) {

    /** Nothing. */
    public static final PoolSkyline OPEN = new PoolSkyline(Horizon.LEVEL, List.of());

    /** The most things beside a pool; own choice. */
    public static final int MOST_SCREENS = 50;

    /** How many places on the water look at the sky; own choice. */
    private static final int PLACES = 200;

    /** From place to place, so that they lie evenly on a disc (Vogel 1979, Mathematical Biosciences 44:179; from memory). */
    private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

    /** Checks the number and keeps its own copy of the list. */
    public PoolSkyline {
        if (screens.size() > MOST_SCREENS) {
            throw new IllegalArgumentException(
                    screens.size() + " things stand beside the pool; allowed: at most " + MOST_SCREENS);
        }
        screens = List.copyOf(screens);
    }

    /**
     * The skylines of the water. A round pool of the same area stands for it, since nobody says which way the pool lies: own
     * choice.
     *
     * @param areaM2 area of the water, m²
     */
    public Skylines skylines(double areaM2) {
        double radius = Math.sqrt(areaM2 / Math.PI);
        List<Wall.Eye> places = IntStream.range(0, screens.isEmpty() ? 1 : PLACES)
                .mapToObj(i -> {
                    double out = radius * Math.sqrt((i + 0.5) / PLACES);
                    return new Wall.Eye(out * Math.sin(i * GOLDEN_ANGLE), out * Math.cos(i * GOLDEN_ANGLE), 0);
                })
                .toList();
        return Skylines.seen(
                places, screens.stream().map(one -> one.wall(radius)).toList(), horizon);
    }
}
