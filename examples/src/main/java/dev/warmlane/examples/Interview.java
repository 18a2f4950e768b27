package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.ScenarioAnswer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;

/** Asks questions one after the other, each until its answer is a good one; one may go back, or leave. */
final class Interview {

    private final BufferedReader in;
    private final PrintWriter out;
    private final boolean echo;

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
     * Asks everything.
     *
     * @throws Left if somebody quits, or the answers end before the questions do
     */
    void ask(List<Question> questions, Answers answers) throws IOException {
        Deque<Integer> before = new ArrayDeque<>();
        int at = 0;
        while (at < questions.size()) {
            Question question = questions.get(at);
            if (!question.asked().test(answers)) {
                answers.forget(question.id());
                at++;
            } else if (answered(question, answers)) {
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
    private boolean answered(Question question, Answers answers) throws IOException {
        while (true) {
            // an answer given before one went back is the usual one now
            String known = answers.text(question.id());
            String usual = known.isEmpty() ? question.usual().apply(answers) : known;
            String written = line(question.words() + (usual.isEmpty() ? ": " : " [" + usual + "]: "));
            switch (written.toLowerCase(Locale.ROOT)) {
                case "back", "<" -> {
                    return false;
                }
                case "quit", "exit" -> throw new Left("left before the end; nothing was written");
                case "?", "help" -> out.println("  " + question.more());
                default -> {
                    if (checked(question, written.isEmpty() ? usual : written, answers)) {
                        return true;
                    }
                }
            }
        }
    }

    private boolean checked(Question question, String written, Answers answers) {
        if (written.isEmpty()) {
            out.println("  Please answer this one; ? says more, back goes back, quit leaves.");
            return false;
        }
        try {
            ScenarioAnswer answer = question.check().of(written, answers);
            answers.put(question.id(), answer);
            return true;
        } catch (IllegalArgumentException wrong) {
            out.println(
                    "  " + Printable.lines(String.valueOf(wrong.getMessage())).replace("\n", "\n  "));
            return false;
        }
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
