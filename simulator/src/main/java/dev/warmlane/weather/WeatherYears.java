package dev.warmlane.weather;

import dev.warmlane.site.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Real years of one place, in the order of the calendar, whatever order they were given in. Each went through the same
 * reading as a typical year; what could not be used is left out with the reason. Immutable, safe to share.
 *
 * <p>A year takes 1.0 MB (its columns and sun positions: 14 numbers and a year for each of 8760 hours), so that thirty
 * take 31 MB; reading takes some MB more for each thread.
 */
public final class WeatherYears {

    /** How far apart the places of the years may be, km: a grid cell of satellite data, a station that moved (own choice). */
    public static final double SAME_PLACE_KM = 10;

    /** How much their heights may differ, m: 0.7 K of air, at the 6.5 K/km of the standard atmosphere (own choice). */
    public static final double SAME_HEIGHT_M = 100;

    private final List<RealYear> years;
    private final List<LeftOut> leftOut;

    /**
     * What is not among the years.
     *
     * @param what a file, or a year of it
     * @param reason why
     */
    public record LeftOut(String what, String reason) {}

    private WeatherYears(List<RealYear> years, List<LeftOut> leftOut) {
        this.years = List.copyOf(years);
        this.leftOut =
                leftOut.stream().sorted(Comparator.comparing(LeftOut::what)).toList();
    }

    /**
     * Reads years by their files' own conventions.
     *
     * @param from files of one or several years each, or folders with such files
     * @throws WeatherFileException if a year is there twice, or none of the files holds a year that can be used
     * @throws IOException if a file or folder is not there or cannot be opened
     */
    public static WeatherYears read(Path... from) throws IOException {
        return read(List.of(from), WeatherReadOptions.defaults());
    }

    /**
     * Reads years, several files at a time.
     *
     * @param from files of one or several years each, or folders with such files
     * @param options what is known better than the files say, of all of them
     * @throws WeatherFileException if a year is there twice, or none of the files holds a year that can be used
     * @throws IOException if a file or folder is not there or cannot be opened
     */
    public static WeatherYears read(List<Path> from, WeatherReadOptions options) throws IOException {
        List<Path> files = files(from);
        List<Attempt> attempts =
                files.parallelStream().map(file -> Attempt.of(file, options)).toList();
        List<LeftOut> leftOut = new ArrayList<>();
        List<WeatherYear> read = new ArrayList<>();
        for (Attempt attempt : attempts) {
            if (attempt.failure != null) {
                throw attempt.failure;
            }
            read.addAll(attempt.years);
            leftOut.addAll(attempt.leftOut);
        }
        Gathered gathered = gather(read, leftOut);
        Path where = from.isEmpty() ? Path.of("") : from.get(0);
        if (gathered.twice.isPresent()) {
            throw new WeatherFileException(
                    where,
                    0,
                    "",
                    gathered.twice.get(),
                    "every calendar year once",
                    "Remove one of the two; a csv without a column \"year\" counts as " + PlainFormat.YEAR_UNLESS_GIVEN
                            + ".");
        }
        if (gathered.years.isEmpty()) {
            throw new WeatherFileException(
                    where,
                    0,
                    "",
                    gathered.leftOut.isEmpty()
                            ? "no files"
                            : "no year that can be used: "
                                    + gathered.leftOut.get(0).what() + ": "
                                    + gathered.leftOut.get(0).reason(),
                    "weather files of real years",
                    "Try one of them with the command \"weather\", which says all that is wrong with it.");
        }
        return new WeatherYears(gathered.years, gathered.leftOut);
    }

    /**
     * Years that a program has, or has read.
     *
     * @throws IllegalArgumentException if a year is there twice, or none can be used
     */
    public static WeatherYears of(List<WeatherYear> years) {
        Gathered gathered = gather(years, List.of());
        gathered.twice.ifPresent(what -> {
            throw new IllegalArgumentException(what);
        });
        if (gathered.years.isEmpty()) {
            throw new IllegalArgumentException("no real year among " + years.size());
        }
        return new WeatherYears(gathered.years, gathered.leftOut);
    }

    /** The years, the earliest first; at least one. */
    public List<RealYear> years() {
        return years;
    }

    /** What was left out, by name. */
    public List<LeftOut> leftOut() {
        return leftOut;
    }

    /** The same, telling of what was left out nothing but how much: for whoever may not be meant to read the files. */
    public WeatherYears withoutContent() {
        return leftOut.isEmpty()
                ? this
                : new WeatherYears(
                        years,
                        List.of(new LeftOut(
                                leftOut.size() + (leftOut.size() == 1 ? " file or year" : " files or years"),
                                "cannot be used; lies" + WeatherFileException.NOT_SHOWN)));
    }

    /** The place, as the earliest year has it. */
    public Site site() {
        return years.get(0).weather().site();
    }

    /** The calendar years between the first and the last that are not there. */
    public List<Integer> gaps() {
        List<Integer> gaps = new ArrayList<>();
        for (int i = 1; i < years.size(); i++) {
            for (int year = years.get(i - 1).calendarYear() + 1;
                    year < years.get(i).calendarYear();
                    year++) {
                gaps.add(year);
            }
        }
        return gaps;
    }

    /** The leap years among them, whose 29 February was left out: every season has the same days. */
    public List<Integer> leapYears() {
        return years.stream()
                .map(RealYear::calendarYear)
                .filter(year -> Year.isLeap(year))
                .toList();
    }

    /**
     * The years cut at an hour of the year, for seasons that run over New Year: each pair of years that follow each other
     * gives one. With hour 0 they are the calendar years.
     *
     * @param firstHour the hour they begin at, 0 to 8759
     */
    public List<SeasonYear> startingAt(int firstHour) {
        List<SeasonYear> cut = new ArrayList<>();
        for (int i = 0; i < years.size(); i++) {
            RealYear begins = years.get(i);
            if (firstHour == 0) {
                cut.add(new SeasonYear(begins, begins, 0));
            } else if (i + 1 < years.size() && years.get(i + 1).calendarYear() == begins.calendarYear() + 1) {
                cut.add(new SeasonYear(begins, years.get(i + 1), firstHour));
            }
        }
        return cut;
    }

    /**
     * How the years' hours differ in what their labels mean, in a sentence; empty where all are alike. Each year's sun is
     * that of its own irradiance whatever the label, but what is taken for an hour of another year may be of a time that is
     * half an hour away.
     */
    public Optional<String> labelsDiffer() {
        Map<String, List<String>> byTime = new LinkedHashMap<>();
        for (RealYear year : years) {
            String time =
                    Occurrences.number(Math.rint(100 * year.weather().sun().usualOffsetHours()) / 100);
            byTime.computeIfAbsent(time, any -> new ArrayList<>()).add(Integer.toString(year.calendarYear()));
        }
        return byTime.size() == 1
                ? Optional.empty()
                : Optional.of("irradiance is of another time of its hour in some years than in others: "
                        + byTime.entrySet().stream()
                                .map(e ->
                                        e.getKey() + " h after the hour's start in " + String.join(", ", e.getValue()))
                                .collect(Collectors.joining("; "))
                        + ". The sun is right in each of them; temperature, humidity and wind may be as far apart, so that"
                        + " years differ by their files too");
    }

    /** Why a site is another place than that of these years; nothing where it is the same. */
    public Optional<String> elsewhere(Site other) {
        return elsewhere(other, site());
    }

    private record Gathered(List<RealYear> years, List<LeftOut> leftOut, Optional<String> twice) {}

    private static Gathered gather(List<WeatherYear> read, List<LeftOut> before) {
        List<LeftOut> leftOut = new ArrayList<>(before);
        Map<Integer, RealYear> byYear = new TreeMap<>();
        for (WeatherYear weather : read) {
            Optional<Integer> year = RealYear.calendarYearOf(weather);
            if (year.isEmpty()) {
                leftOut.add(
                        new LeftOut(
                                weather.source(),
                                "its months are of several calendar years: it is a typical year, and has no place among real ones"));
                continue;
            }
            RealYear other = byYear.put(year.get(), new RealYear(year.get(), weather));
            if (other != null) {
                String twice = Stream.of(other.weather().source(), weather.source())
                        .sorted()
                        .collect(Collectors.joining(" and again as "));
                return new Gathered(List.of(), leftOut, Optional.of("the year " + year.get() + " as " + twice));
            }
        }
        List<RealYear> all = List.copyOf(byYear.values());
        Optional<Site> site = mostCommonSite(all);
        List<RealYear> here = new ArrayList<>();
        for (RealYear year : all) {
            Optional<String> elsewhere =
                    site.flatMap(common -> elsewhere(year.weather().site(), common));
            if (elsewhere.isEmpty()) {
                here.add(year);
            } else {
                leftOut.add(new LeftOut(year.weather().source(), elsewhere.get()));
            }
        }
        return new Gathered(ofOneKind(here, leftOut), leftOut, Optional.empty());
    }

    /** Those whose irradiance is of the kind that most have, means where as many have either: kinds cannot be spliced. */
    private static List<RealYear> ofOneKind(List<RealYear> years, List<LeftOut> leftOut) {
        Map<Boolean, List<RealYear>> byMeans = years.stream()
                .collect(Collectors.partitioningBy(year -> year.weather().sun().isHourlyMean()));
        List<RealYear> means = byMeans.getOrDefault(true, List.of());
        List<RealYear> instants = byMeans.getOrDefault(false, List.of());
        boolean useMeans = means.size() >= instants.size();
        for (RealYear other : useMeans ? instants : means) {
            leftOut.add(new LeftOut(
                    other.weather().source(),
                    useMeans
                            ? "its irradiance is of an instant, that of the other years a mean over the hour"
                            : "its irradiance is a mean over the hour, that of the other years of an instant"));
        }
        return useMeans ? means : instants;
    }

    /** The site with which most years agree, the earliest of equals: one year from elsewhere must not drive out the rest. */
    private static Optional<Site> mostCommonSite(List<RealYear> years) {
        Optional<Site> most = Optional.empty();
        long agreed = 0;
        for (RealYear year : years) {
            Site site = year.weather().site();
            long agree = years.stream()
                    .filter(other -> elsewhere(other.weather().site(), site).isEmpty())
                    .count();
            if (agree > agreed) {
                most = Optional.of(site);
                agreed = agree;
            }
        }
        return most;
    }

    private static String in(Site site) {
        return site.name().isEmpty() ? "" : " (" + site.name() + ")";
    }

    /** Why a site is another place; nothing where it is the same. */
    static Optional<String> elsewhere(Site site, Site common) {
        double km = Distance.km(site, common);
        if (km > SAME_PLACE_KM) {
            return Optional.of("its place" + in(site) + " is " + Math.round(km) + " km from that of the other years"
                    + in(common) + "; at most " + Math.round(SAME_PLACE_KM) + " km make one place");
        }
        double metres = Math.abs(site.elevationM() - common.elevationM());
        if (metres > SAME_HEIGHT_M) {
            return Optional.of("its height differs from that of the other years by " + Math.round(metres)
                    + " m; at most " + Math.round(SAME_HEIGHT_M) + " m make one place");
        }
        if (site.utcOffsetHours() != common.utcOffsetHours()) {
            return Optional.of("its hours are of " + ClockWords.utc(site.utcOffsetHours())
                    + ", those of the other years of " + ClockWords.utc(common.utcOffsetHours())
                    + "; read it with the other offset if that is its clock");
        }
        return Optional.empty();
    }

    private static List<Path> files(List<Path> from) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : from) {
            if (Files.isDirectory(path)) {
                try (Stream<Path> inside = Files.list(path)) {
                    inside.filter(Files::isRegularFile)
                            .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                            .sorted()
                            .forEach(files::add);
                }
            } else if (Files.exists(path)) {
                files.add(path);
            } else {
                throw new NoSuchFileException(path.toString());
            }
        }
        return files.stream().distinct().toList();
    }

    /** What came of a file. */
    private static final class Attempt {
        private final List<WeatherYear> years = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();
        private @Nullable IOException failure;

        static Attempt of(Path file, WeatherReadOptions options) {
            Attempt attempt = new Attempt();
            String name = String.valueOf(file.getFileName());
            try {
                List<FileYear> found = WeatherFiles.readYears(file, options);
                found.forEach(year -> year.match(
                        sound -> attempt.years.add(sound.weather()),
                        out -> attempt.leftOut.add(new LeftOut(name + ", " + out.year(), reason(out.reason())))));
                if (found.size() > 1 && attempt.years.isEmpty()) {
                    String first = attempt.leftOut.get(0).reason();
                    attempt.leftOut.clear();
                    attempt.leftOut.add(new LeftOut(
                            name,
                            "its hours are of " + found.size() + " calendar years, none of them whole, so that it is a"
                                    + " typical year, which has no place among real ones, or broken: " + first));
                }
            } catch (WeatherFileException e) {
                attempt.leftOut.add(new LeftOut(name, reason(e)));
            } catch (IOException e) {
                attempt.failure = e;
            }
            return attempt;
        }

        private static String reason(WeatherFileException e) {
            return WeatherFileException.message(
                    e.line() > 0 ? "line " + e.line() : "the file", e.column(), e.found(), e.expected(), e.remedy());
        }
    }
}
