package dev.warmlane.weather.generate;

import dev.warmlane.site.Site;

/** Invented normals for tests: a temperate site, its mirror in the south, a damp tropical one and a high dry one. */
final class Climates {

    static final Site NORTH = new Site("north", 44, 8, 150, 1);
    static final Site SOUTH = new Site("south", -44, 8, 150, 1);
    static final Site TROPIC = new Site("tropic", -4, -38.5, 25, -3);
    static final Site HIGH = new Site("high", 35, -106, 1600, -7);

    private static final double[] TEMPERATE_GHI = {1.4, 2.3, 3.6, 4.6, 5.6, 6.3, 6.5, 5.5, 4.0, 2.6, 1.5, 1.1};
    private static final double[] TEMPERATE_AIR = {2, 4, 8, 12, 17, 21, 23, 22.5, 18.5, 13, 7, 3};
    private static final double[] TEMPERATE_RANGE = {6, 7, 9, 9.5, 10, 10, 11, 10.5, 9, 8, 6, 5.5};
    private static final double[] TEMPERATE_DEW = {-0.5, 0, 2.5, 6, 11, 14.5, 16, 16.5, 14, 10, 5, 1};
    private static final double[] TEMPERATE_WIND = {1.2, 1.5, 1.9, 2, 1.9, 1.8, 1.7, 1.6, 1.5, 1.3, 1.2, 1.2};

    private Climates() {}

    static MonthlyNormals.Builder temperateBuilder() {
        return MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(TEMPERATE_GHI)
                .airTemperatureC(TEMPERATE_AIR)
                .dailyRangeK(TEMPERATE_RANGE)
                .dewPointC(TEMPERATE_DEW)
                .windSpeedMs(TEMPERATE_WIND);
    }

    static MonthlyNormals of(Site site) {
        if (site.equals(NORTH)) {
            return temperateBuilder().build();
        }
        if (site.equals(SOUTH)) {
            return MonthlyNormals.builder()
                    .globalHorizontalKwhM2Day(halfYearLater(TEMPERATE_GHI))
                    .airTemperatureC(halfYearLater(TEMPERATE_AIR))
                    .dailyRangeK(halfYearLater(TEMPERATE_RANGE))
                    .dewPointC(halfYearLater(TEMPERATE_DEW))
                    .windSpeedMs(halfYearLater(TEMPERATE_WIND))
                    .build();
        }
        if (site.equals(TROPIC)) {
            return MonthlyNormals.builder()
                    .globalHorizontalKwhM2Day(5.4, 5.2, 4.9, 4.7, 5.1, 5.2, 5.6, 6.2, 6.4, 6.5, 6.4, 5.9)
                    .airTemperatureC(27.5, 27.4, 27.1, 27, 26.9, 26.5, 26.4, 26.7, 27, 27.3, 27.6, 27.7)
                    .dailyRangeK(6, 6, 5.8, 5.8, 6, 6.4, 7, 7.2, 6.8, 6.4, 6.2, 6.2)
                    .relativeHumidity(.78, .8, .84, .84, .82, .8, .78, .75, .74, .74, .74, .76)
                    .windSpeedMs(3.4, 3, 2.7, 2.8, 3.2, 3.6, 4.2, 5, 5.2, 5, 4.8, 4.2)
                    .build();
        }
        return MonthlyNormals.builder()
                .globalHorizontalKwhM2Day(3.2, 4.2, 5.5, 6.8, 7.6, 8.0, 7.3, 6.7, 5.9, 4.8, 3.5, 2.9)
                .airTemperatureC(2, 4.5, 8.5, 13, 18, 23.5, 25.5, 24.5, 20.5, 14, 7, 2)
                .dailyRangeK(13, 13.5, 14.5, 15.5, 15.5, 16, 14.5, 14, 14, 14.5, 14, 12.5)
                .dewPointC(-7, -7, -7, -6, -3, 1, 9, 10, 6, 0, -4, -6)
                .windSpeedMs(3.3, 3.7, 4.2, 4.8, 4.6, 4.3, 3.8, 3.5, 3.6, 3.5, 3.3, 3.2)
                .pressureKpa(83.6, 83.6, 83.4, 83.4, 83.5, 83.6, 83.9, 83.9, 83.9, 83.8, 83.7, 83.6)
                .build();
    }

    private static double[] halfYearLater(double[] months) {
        double[] later = new double[12];
        for (int m = 0; m < 12; m++) {
            later[(m + 6) % 12] = months[m];
        }
        return later;
    }
}
