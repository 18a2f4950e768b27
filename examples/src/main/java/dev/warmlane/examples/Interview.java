package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks questions one after the other, each until its answer is a good one; one may go back, or leave. */
final class Interview {

    /** What people write who do not know. */
    private static final Pattern UNKNOWN = Pattern.compile(
            "(?i)(i )?(do not|don'?t) know|dunno|no idea|not (sure|known)|unknown|unsure|n/?a|-+|\\?+|tbd|xx+");

    /** What a message offers, if it is one thing. */
    private static final Pattern OFFER = Pattern.compile(
            "(?:did you mean|write a decimal point,|such as the mean,) (?:\"((?:(?!\" or \").)+?)\"|(\\d+(?:\\.\\d+)?))"
                    + "(?:\\?|(?=;)|$)");

    private final BufferedReader in;
    private final PrintWriter out;
    private final boolean echo;

    /** What the last message offered instead of the answer, or empty. */
    private String offered = "";

    /** Looks at what was answered so far, as soon as it is. */
    interface Look {

        /**
         * Tells what is to be told after an answer.
         *
         * @param at the place of the question among all
         * @throws IllegalArgumentException if nothing can come of the answers with this one
         */
        void after(int at, Answers answers);
    }

    /** With an echo of every answer where nobody sees what is typed, as when answers come from a file. */
    Interview(BufferedReader in, PrintWriter out, boolean echo) {
        this.in = in;
        this.out = out;
        this.echo = echo;
    }

    /** Somebody left, or there were no more answers. */
    static final class Left extends IOException {
        private static final long serialVersionUID = 1;

        Left(String message) {
            super(message);
        }
    }

    /**
     * Asks everything, of the rare questions only if somebody wants to be asked.
     *
     * @throws Left if somebody quits, or the answers end before the questions do
     */
    void ask(List<Question> questions, Answers answers, Look look) throws IOException {
        Deque<Integer> before = new ArrayDeque<>();
        int at = 0;
        while (at < questions.size()) {
            Question question = questions.get(at);
            if (!question.asked().test(answers)) {
                answers.forget(question.id());
                at++;
            } else if (question.rare() && !MoreQuestions.wanted(answers)) {
                question.assume(answers);
                at++;
            } else if (answered(questions, at, answers, look)) {
                before.push(at);
                at++;
            } else if (!before.isEmpty()) {
                at = before.pop();
            } else {
                out.println("  This is the first question.");
            }
        }
    }

    /** Asks until there is a good answer, true, or somebody wants to go back, false. */
    private boolean answered(List<Question> questions, int at, Answers answers, Look look) throws IOException {
        Question question = questions.get(at);
        offered = "";
        if (!question.heading().isEmpty()) {
            out.println();
            out.println(question.heading());
        }
        while (true) {
            // what somebody said before going back is the usual answer now
            String said = answers.to(question.id())
                    .filter(answer -> !answer.assumed())
                    .map(Answer::text)
                    .orElse("");
            String usual = said.isEmpty() ? question.usual().apply(answers) : said;
            String written = line(question.words().apply(answers) + (usual.isEmpty() ? ": " : " [" + usual + "]: "));
            switch (written.toLowerCase(Locale.ROOT)) {
                case "back", "<" -> {
                    return false;
                }
                case "quit", "exit" -> throw new Left("left before the end; nothing was written");
                case "?", "help" -> out.println("  " + question.more());
                default -> {
                    boolean taken = written.isEmpty() && said.isEmpty();
                    boolean agreed = !offered.isEmpty() && written.matches("(?i)y(es)?|ok");
                    String answer = agreed ? offered : written.isEmpty() ? usual : written;
                    if (checked(question, answer, taken, answers, a -> look.after(at, a))) {
                        return true;
                    }
                }
            }
        }
    }

    private boolean checked(
            Question question, String written, boolean taken, Answers answers, Consumer<Answers> lookAfter) {
        offered = "";
        if (written.isEmpty()) {
            out.println("  Please answer this one; ? says more, back goes back, quit leaves.");
            return false;
        }
        if (UNKNOWN.matcher(written).matches()) {
            out.println(
                    "  An empty line takes what stands in brackets, and the file says that it is assumed; ? says more.");
            return false;
        }
        Optional<Answer> earlier = answers.to(question.id());
        try {
            Answer answer = question.check().of(written, answers);
            answers.put(question.id(), taken ? answer.taken() : answer);
            lookAfter.accept(answers);
            return true;
        } catch (IllegalArgumentException wrong) {
            earlier.ifPresentOrElse(answer -> answers.put(question.id(), answer), () -> answers.forget(question.id()));
            String message = String.valueOf(wrong.getMessage());
            offered = offer(message);
            out.println("  " + Printable.lines(message).replace("\n", "\n  ")
                    + (offered.isEmpty() ? "" : "\n  yes takes \"" + Printable.line(offered) + "\""));
            return false;
        }
    }

    /** What a message offers instead of what it is about, or empty. */
    static String offer(String message) {
        Matcher offer = OFFER.matcher(message);
        if (!offer.find()) {
            return "";
        }
        return offer.group(1) == null ? offer.group(2) : offer.group(1);
    }

    /** Yes or no; an empty line is a no. */
    boolean yes(String words) throws IOException {
        while (true) {
            String written = line(words + " (yes or no) [no]: ").toLowerCase(Locale.ROOT);
            if (written.matches("y(es)?")) {
                return true;
            }
            if (written.matches("|no?|quit|exit")) {
                return false;
            }
        }
    }

    private String line(String prompt) throws IOException {
        out.print(prompt);
        out.flush();
        String line = in.readLine();
        if (line == null) {
            out.println();
            throw new Left("the answers ended before the questions did; nothing was written");
        }
        String written = line.strip().replaceFirst("^\uFEFF", "");
        if (echo) {
            out.println(Printable.line(written));
        }
        return written;
    }
}
