package dev.warmlane.scenario;

import java.util.Optional;

/**
 * Who hands a report over, and to whom. Words as they are to be printed; empty where nothing is.
 *
 * @param company who hands it over
 * @param contact how to reach them: name, telephone, address
 * @param logo their picture
 * @param preparedFor whom it is for
 * @param offer the number of the offer
 * @param date its date
 * @param place the name of the place, instead of that of the weather file
 */
public record Letterhead(
        String company,
        String contact,
        Optional<Logo> logo,
        String preparedFor,
        String offer,
        String date,
        String place) {

    /** Nothing of it. */
    public static final Letterhead NONE = builder().build();

    /** Starts without anything. */
    public static Builder builder() {
        return new Builder();
    }

    /** Whether there is anything to print above the title. */
    public boolean isEmpty() {
        return logo.isEmpty() && (company + contact + preparedFor + offer + date).isEmpty();
    }

    /** Builds a letterhead; whatever is not set is left out. */
    public static final class Builder {

        private String company = "";
        private String contact = "";
        private Optional<Logo> logo = Optional.empty();
        private String preparedFor = "";
        private String offer = "";
        private String date = "";
        private String place = "";

        private Builder() {}

        /** Sets who hands it over. */
        public Builder company(String value) {
            this.company = value;
            return this;
        }

        /** Sets how to reach them. */
        public Builder contact(String value) {
            this.contact = value;
            return this;
        }

        /** Sets their picture. */
        public Builder logo(Logo value) {
            this.logo = Optional.of(value);
            return this;
        }

        /** Sets whom it is for. */
        public Builder preparedFor(String value) {
            this.preparedFor = value;
            return this;
        }

        /** Sets the number of the offer. */
        public Builder offer(String value) {
            this.offer = value;
            return this;
        }

        /** Sets the date. */
        public Builder date(String value) {
            this.date = value;
            return this;
        }

        /** Sets the name of the place. */
        public Builder place(String value) {
            this.place = value;
            return this;
        }

        /** The letterhead. */
        public Letterhead build() {
            return new Letterhead(company, contact, logo, preparedFor, offer, date, place);
        }
    }
}
