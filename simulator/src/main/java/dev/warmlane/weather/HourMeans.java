package dev.warmlane.weather;

/** Averages rows of which an hour has several: a year of half-hours becomes one of hours. */
final class HourMeans {

    private HourMeans() {}

    /** One row for each hour; a value is missing in it where it is missing in one of the hour's rows. */
    static RawWeather of(RawWeather fine, int rowsPerHour) throws WeatherFileException {
        if (rowsPerHour == 1) {
            return fine;
        }
        RawWeather hours = new RawWeather(fine.text(), fine.header(), fine.rows() / rowsPerHour + rowsPerHour);
        hours.tellAs(fine);
        int incomplete = 0;
        int row = 0;
        while (row < fine.rows()) {
            int end = row + 1;
            while (end < fine.rows() && isSameHour(fine, row, end)) {
                end++;
            }
            if (end - row > rowsPerHour) {
                throw fine.text()
                        .error(
                                fine.line(row),
                                "",
                                end - row + " rows of one hour",
                                rowsPerHour + ", as the first hour has",
                                "Remove what is there twice; a change to daylight saving time doubles an hour.");
            }
            boolean whole = end - row == rowsPerHour;
            incomplete += whole ? 0 : 1;
            if (hours.rows() == fine.rows() / rowsPerHour + rowsPerHour) {
                throw fine.text()
                        .error(
                                fine.line(row),
                                "",
                                "an hour of " + (end - row) + " rows, and many others like it",
                                rowsPerHour + " in every hour",
                                "Only files of one time step can be read.");
            }
            hours.add(fine.line(row), fine.year(row), fine.month(row), fine.day(row), fine.hour(row));
            if (whole) {
                average(fine, row, end, hours);
            }
            row = end;
        }
        hours.note("an hour is the mean of its " + rowsPerHour + " rows"
                + (incomplete == 0 ? "" : "; " + incomplete + " hours lack some of them and count as missing"));
        return hours;
    }

    private static void average(RawWeather fine, int first, int end, RawWeather hours) {
        for (WeatherColumn column : WeatherColumn.values()) {
            double sum = 0;
            for (int row = first; row < end; row++) {
                sum += fine.value(column, row);
            }
            hours.set(column, sum / (end - first));
        }
    }

    private static boolean isSameHour(RawWeather raw, int a, int b) {
        return raw.hour(a) == raw.hour(b)
                && raw.day(a) == raw.day(b)
                && raw.month(a) == raw.month(b)
                && raw.year(a) == raw.year(b);
    }
}
