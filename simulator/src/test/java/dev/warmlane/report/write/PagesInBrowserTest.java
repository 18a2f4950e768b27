package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SampleStudies;
import dev.warmlane.report.Subject;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.Logo;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page in a real browser: what it prints on A4 and on Letter, and how it stands in windows of three widths. Skipped
 * where no Chromium is on the path. With {@code -Dpages.dir=FOLDER} the sheets and windows are kept there to be looked at.
 */
class PagesInBrowserTest {

    /** Longer than a line of the first sheet. */
    private static final String LONG =
            "Heating the outdoor pool of the municipal bathing and sports grounds with unglazed"
                    + " collectors on the roofs of changing rooms and sports hall, second stage";

    private static final Letterhead LETTERHEAD = Letterhead.builder()
            .company("Invented Solar Pools and Sons, Planning and Installation")
            .contact("A. Sample, 1 Nowhere Street, 00000 Nowhere, +00 000 000 00 00, sample@example.org")
            .logo(new Logo("logo.png", "image/png", picture()))
            .preparedFor("the council of the invented town, department of sports")
            .offer("2026-0017, second version")
            .date("3 May 2026")
            .place("Nowhere-on-Sea, outdoor pool")
            .build();

    /** Fewer lines on the last sheet would be better on the one before; own choice. */
    private static final int LINES_ON_LAST = 8;

    /** A colour that nothing else has, to find the technical part by, and how the PDF writes it. */
    private static final String MARK = "rgb(1, 2, 3)";

    private static final String MARK_IN_PDF = ".0039 .0078 .0118 rg";

    private static final String KEPT = System.getProperty("pages.dir", "");

    /** Pages that are open at once: one is made while the browser works on another. Only what is in front can be pictured. */
    private static final int TABS = KEPT.isEmpty() ? 3 : 1;

    private static final int[] WINDOWS = {1400, 800, 390};

    /**
     * Parts of the page that reach out of it to the right or are cut, save those that scroll and say so in words; and
     * tables that say so and do not scroll.
     */
    private static final String CUT = """
            (() => {
              const wide = document.documentElement.clientWidth;
              const all = [...document.querySelectorAll('body *:not(svg *)')];
              const named = e => e.tagName + ' ' + (e.getAttribute('class') || '');
              const saying = (e, where) => getComputedStyle(e, where).content.includes('sideways');
              const slide = e => e.querySelector('.slide');
              const tells = e => saying(slide(e), '::before')
                && parseFloat(getComputedStyle(slide(e), '::before').paddingBottom) > 8;
              const shows = e => slide(e) ? tells(e) : saying(e, '::after');
              const idle = all.filter(e => e.classList.contains('scrolls') && slide(e) && tells(e)
                  && e.scrollWidth <= e.clientWidth).map(e => 'says that it slides: ' + named(e));
              const out = all.filter(e => !e.closest('.scrolls') && e.getBoundingClientRect().right > wide + 0.5)
                .map(e => 'out of the page: ' + named(e));
              const cut = all.filter(e => !e.closest('svg') && e.scrollWidth > e.clientWidth + 1
                  && getComputedStyle(e).display !== 'inline' && !e.closest('table')
                  && !(e.classList.contains('scrolls') && shows(e)))
                .map(e => 'cut: ' + named(e));
              const thin = all.filter(e => wide < 660 && e.matches('header div') && e.clientWidth < 0.8 * wide)
                .map(e => 'no room for its words: ' + named(e));
              const beyond = document.documentElement.scrollWidth - wide;
              return out.concat(cut).concat(idle).concat(thin).concat(beyond > 0 ? ['page too wide by ' + beyond] : []).slice(0, 5).join('; ');
            })()""";

    /** What of the hints to slide is left on paper. */
    private static final String HINTS_ON_PAPER = """
            [...document.querySelectorAll('.scrolls, .slide')].flatMap(e => ['::before', '::after']
              .map(where => getComputedStyle(e, where).content)).filter(words => words.includes('sideways')).join('; ')""";

    /** The headings of the first sheet. */
    private static final String FIRST_HEADINGS =
            "[...document.querySelectorAll('main h2')].map(e => e.textContent).join('; ')";

    /** What an owner asks first; the reports that tell of it have it on the first sheet, however full that is. */
    private static final String MONEY = "Money over the years";

    @TempDir
    private static Path folder;

    private static @Nullable Browser browser;

    @BeforeAll
    static void startBrowser() throws Exception {
        Optional<Path> program = Browser.installed();
        assumeTrue(program.isPresent(), "no Chromium on the path: pages are not opened in a browser");
        browser = Browser.start(program.get(), folder);
    }

    @AfterAll
    static void endBrowser() throws Exception {
        if (browser != null) {
            browser.quit();
        }
    }

    @Test
    void firstSheetIsOneSheetAndNothingIsOrphanedOrCut() throws Exception {
        Queue<Map.Entry<String, Report>> left =
                new ConcurrentLinkedQueue<>(reports().entrySet());
        List<String> wrong = new CopyOnWriteArrayList<>();
        ExecutorService workers = Executors.newFixedThreadPool(TABS);
        List<Future<Object>> done = workers.invokeAll(Collections.nCopies(TABS, () -> {
            Browser.Tab tab = Objects.requireNonNull(browser).tab();
            for (Map.Entry<String, Report> one = left.poll(); one != null; one = left.poll()) {
                String name = one.getKey();
                findings(tab, name, HtmlWriter.page(one.getValue()))
                        .forEach(finding -> wrong.add(name + ": " + finding));
                if (hasMoney(one.getValue()) && !tab.ask(FIRST_HEADINGS).contains(MONEY)) {
                    wrong.add(name + ": its money is not on the first sheet");
                }
            }
            return "done";
        }));
        workers.shutdown();
        for (Future<Object> one : done) {
            one.get();
        }
        assertThat(wrong).isEmpty();
    }

    private static List<String> findings(Browser.Tab opened, String name, String page) throws Exception {
        List<String> wrong = new ArrayList<>();
        opened.width(WINDOWS[0]);
        opened.open(page);
        for (int width : WINDOWS) {
            opened.width(width);
            String cut = opened.ask(CUT);
            if (!cut.isEmpty()) {
                wrong.add(width + " px: " + cut);
            }
            if (!KEPT.isEmpty()) {
                keep(name + "-" + width + ".png", opened.screenshot());
            }
        }
        opened.complaints().forEach(complaint -> wrong.add("console: " + complaint));
        opened.requests().forEach(request -> wrong.add("asks for " + request));
        opened.paper(true);
        String hints = opened.ask(HINTS_ON_PAPER);
        opened.paper(false);
        if (!hints.isEmpty()) {
            wrong.add("on paper: " + hints);
        }
        opened.ask("(() => { document.querySelector('.second h1').style.color = '" + MARK + "'; return 'done'; })()");
        wrong.addAll(onPaper(name + "-a4", opened.print(8.27, 11.69)));
        wrong.addAll(onPaper(name + "-letter", opened.print(8.5, 11)));
        return wrong;
    }

    private static boolean hasMoney(Report report) {
        return report.sections().stream()
                .anyMatch(section -> section.heading().equals(MONEY)
                        && !section.at(Place.FIRST_SHEET).isEmpty());
    }

    private static List<String> onPaper(String name, Pdf pdf) throws Exception {
        keep(name + ".pdf", pdf.bytes());
        List<String> wrong = new ArrayList<>();
        if (!pdf.sheetsWith(MARK_IN_PDF).equals(List.of(1))) {
            wrong.add(name + ": the technical part begins on sheet " + pdf.sheetsWith(MARK_IN_PDF) + " counted from 0");
        }
        long last = pdf.lines(pdf.sheets() - 1);
        if (last < LINES_ON_LAST) {
            wrong.add(name + ": the last of " + pdf.sheets() + " sheets has " + last + " lines");
        }
        return wrong;
    }

    /** A black picture much wider than a page has room for. */
    private static String picture() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(1200, 300, BufferedImage.TYPE_BYTE_BINARY), "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    private static void keep(String name, byte[] bytes) throws Exception {
        if (!KEPT.isEmpty()) {
            Files.createDirectories(Path.of(KEPT));
            Files.write(Path.of(KEPT, name), bytes);
        }
    }

    /** Every scenario and study in its own units, and in the other ones with a long title. */
    private static Map<String, Report> reports() {
        Map<String, Report> reports = new LinkedHashMap<>();
        Map.of(
                        "municipal",
                        SampleStudies.MUNICIPAL,
                        "club",
                        SampleStudies.CLUB,
                        "southern",
                        SampleStudies.SOUTHERN,
                        "indoor",
                        SampleStudies.INDOOR)
                .forEach((name, study) -> {
                    UnitSystem other = study.units() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
                    SampleStudies otherwise = study.in(new ReportSettings(LONG, other, LETTERHEAD));
                    Stream.of(study, otherwise).forEach(of -> Stream.concat(
                                    Stream.of(ForecastReport.of(of.described())), of.reports().stream())
                            .forEach(report -> reports.put(
                                    name + "-" + report.name() + "-"
                                            + of.units().name().toLowerCase(Locale.ROOT),
                                    report)));
                });
        for (UnitSystem units : UnitSystem.values()) {
            Subject hotel = SampleReports.HOTEL;
            reports.put(
                    "hotel-forecast-" + units.name().toLowerCase(Locale.ROOT),
                    ForecastReport.of(new Subject(
                            hotel.forecast(),
                            hotel.summary(),
                            new ReportSettings(
                                    units == UnitSystem.US
                                            ? LONG
                                            : hotel.settings().title(),
                                    units),
                            hotel.assumed(),
                            hotel.warnings())));
        }
        reports.put("drawn-forecast-metric", ForecastReport.of(SampleReports.DRAWN));
        for (String odd : List.of("no collectors", "one day", "never open", "neither collectors nor heater")) {
            reports.put(odd, ForecastReport.of(SampleReports.odd(odd)));
        }
        return reports;
    }
}
