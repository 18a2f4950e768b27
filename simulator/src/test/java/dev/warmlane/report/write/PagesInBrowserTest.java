package dev.warmlane.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.warmlane.report.Place;
import dev.warmlane.report.Report;
import dev.warmlane.report.SampleReports;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every page in a real browser: what it prints on A4 and on Letter, and how it stands in windows of three widths. Skipped
 * where no Chromium is on the path. With {@code -Dpages.dir=FOLDER} pages, sheets and windows are kept there to be looked
 * at.
 */
class PagesInBrowserTest {

    /** Fewer lines on the last sheet would be better on the one before; own choice. */
    private static final int LINES_ON_LAST = 8;

    /** Fewer lines below a heading at the foot of a sheet leave it alone; own choice. */
    private static final int LINES_BELOW_HEADING = 2;

    /** Colours that nothing else has, to find the technical part and headings by, and how the PDF writes them. */
    private static final String MARK = "rgb(1, 2, 3)";

    private static final String MARK_IN_PDF = ".0039 .0078 .0118 rg";
    private static final String HEADING = "rgb(4, 5, 6)";
    private static final String HEADING_IN_PDF = ".0157 .0196 .0235 rg";

    private static final String KEPT = System.getProperty("pages.dir", "");

    /** Pages that are open at once: one is made while the browser works on another. Only what is in front can be pictured. */
    private static final int TABS = KEPT.isEmpty() ? 3 : 1;

    private static final int[] WINDOWS = {1400, 800, 390};

    /** Between the margins of A4, CSS pixels: 184 mm. */
    private static final int PAPER = 695;

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
              const shows = e => slide(e) ? tells(e) : saying(e, '::before');
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
            [...document.querySelectorAll('.scrolls, .slide')].map(e => getComputedStyle(e, '::before').content)
              .filter(words => words.includes('sideways')).join('; ')""";

    /** The headings of the first sheet. */
    private static final String FIRST_HEADINGS =
            "[...document.querySelectorAll('main h2')].map(e => e.textContent).join('; ')";

    /** What an owner asks first; the reports that tell of it have it on the first sheet, however full that is. */
    private static final String MONEY = "Money over the years";

    /**
     * Colours what is to be found on paper. Printing is about sheets, not about charts: each is left three words of its own
     * in its place, which takes half of the time.
     */
    private static final String MARKED = """
            (() => {
              document.querySelectorAll('h2').forEach(e => e.style.color = '%s');
              document.querySelector('.second h1').style.color = '%s';
              if (%b) document.querySelectorAll('svg').forEach(e => {
                const high = e.viewBox.baseVal.height;
                e.innerHTML = [.2, .5, .8].map(y => `<text y='${y * high}'>chart</text>`).join('');
              });
              return 'done';
            })()""".formatted(HEADING, MARK, KEPT.isEmpty());

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
        Queue<Map.Entry<String, Supplier<Report>>> left =
                new ConcurrentLinkedQueue<>(EveryPage.all().entrySet());
        List<String> wrong = new CopyOnWriteArrayList<>();
        ExecutorService workers = Executors.newFixedThreadPool(TABS);
        List<Future<Object>> done = workers.invokeAll(Collections.nCopies(TABS, () -> {
            Browser.Tab tab = Objects.requireNonNull(browser).tab();
            for (Map.Entry<String, Supplier<Report>> one = left.poll(); one != null; one = left.poll()) {
                String name = one.getKey();
                Report report = one.getValue().get();
                findings(tab, name, SampleReports.page(report)).forEach(finding -> wrong.add(name + ": " + finding));
                if (hasMoney(report) && !tab.ask(FIRST_HEADINGS).contains(MONEY)) {
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

    /** Each way to break a page, put in before something that stands on every page, and what must be found then. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            </main>    | <p style="height:300mm">long</p>                                          | a4: the technical part begins on sheet
            </main>    | <p style="height:300mm">long</p>                                          | letter: the technical part begins on sheet
            </body>    | <p style="break-before:page">alone</p>                                    | sheets has 1 lines
            </body>    | <h2 style="break-after:page">heading</h2><p>far from it</p>               | ends with a heading
            </body>    | <div style="width:1500px">wide</div>                                      | 1400 px: out of the page
            </body>    | <div style="width:500px">wide</div>                                       | 390 px: out of the page
            </body>    | <div style="width:750px">wide</div>                                       | paper: out of the page
            </body>    | <p style="width:30px;overflow:hidden;white-space:nowrap">a long line</p>  | cut: P
            </body>    | <img src="http://127.0.0.1:9/picture.png"/>                               | asks for http://127.0.0.1:9/
            </body>    | <script>console.error('trouble')</script>                                 | console:
            """)
    void whatIsBrokenIsFound(String before, String broken, String found) throws Exception {
        String page = SampleReports.page(SampleReports.report(SampleReports.SOUTHERN))
                .replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "")
                .replace(before, broken + before);
        assertThat(findings(Objects.requireNonNull(browser).tab(), "broken", page))
                .anyMatch(finding -> finding.contains(found));
    }

    private static List<String> findings(Browser.Tab opened, String name, String page) throws Exception {
        keep(name + ".html", page.getBytes(StandardCharsets.UTF_8));
        List<String> wrong = new ArrayList<>();
        opened.paper(false);
        opened.width(WINDOWS[0]);
        opened.open(page);
        for (int width : WINDOWS) {
            opened.width(width);
            cut(opened, width + " px").ifPresent(wrong::add);
            if (!KEPT.isEmpty()) {
                keep(name + "-" + width + ".png", opened.screenshot());
            }
        }
        opened.complaints().forEach(complaint -> wrong.add("console: " + complaint));
        opened.requests().forEach(request -> wrong.add("asks for " + request));
        opened.ask(MARKED);
        opened.width(PAPER);
        opened.paper(true);
        cut(opened, "paper").ifPresent(wrong::add);
        String hints = opened.ask(HINTS_ON_PAPER);
        if (!hints.isEmpty()) {
            wrong.add("on paper: " + hints);
        }
        wrong.addAll(onPaper(name + "-a4", opened.print(8.27, 11.69)));
        wrong.addAll(onPaper(name + "-letter", opened.print(8.5, 11)));
        return wrong;
    }

    private static boolean hasMoney(Report report) {
        return report.sections().stream()
                .anyMatch(section -> section.heading().equals(MONEY)
                        && !section.at(Place.FIRST_SHEET).isEmpty());
    }

    private static Optional<String> cut(Browser.Tab opened, String where) throws Exception {
        return Optional.of(opened.ask(CUT)).filter(cut -> !cut.isEmpty()).map(cut -> where + ": " + cut);
    }

    private static List<String> onPaper(String name, Pdf pdf) throws Exception {
        keep(name + ".pdf", pdf.bytes());
        List<String> wrong = new ArrayList<>();
        if (!pdf.sheetsWith(MARK_IN_PDF).equals(List.of(1))) {
            wrong.add(name + ": the technical part begins on sheet " + pdf.sheetsWith(MARK_IN_PDF) + " counted from 0");
        }
        for (int sheet = 0; sheet < pdf.sheets(); sheet++) {
            OptionalLong below = pdf.linesAfter(HEADING_IN_PDF, sheet);
            if (below.isPresent() && below.getAsLong() < LINES_BELOW_HEADING) {
                wrong.add(name + ": sheet " + sheet + " counted from 0 ends with a heading and " + below.getAsLong()
                        + " lines");
            }
        }
        long last = pdf.lines(pdf.sheets() - 1);
        if (last < LINES_ON_LAST) {
            wrong.add(name + ": the last of " + pdf.sheets() + " sheets has " + last + " lines");
        }
        return wrong;
    }

    private static void keep(String name, byte[] bytes) throws Exception {
        if (!KEPT.isEmpty()) {
            Files.createDirectories(Path.of(KEPT));
            Files.write(Path.of(KEPT, name), bytes);
        }
    }
}
