package courseworthy.report;

import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonWeeks;
import courseworthy.build.SeasonWeeks.Entry;
import courseworthy.build.SeasonWeeks.Week;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A season as entries of a calendar: starts, journeys, work by evening and service. Times are those on the clock of wherever each
 * takes place.
 */
public final class SeasonCalendar {

    /** A ride of which the time is not known is shown as so long (judgement, no source). */
    private static final Duration UNKNOWN = Duration.ofHours(1);
    /** A start is announced an hour before it (common practice, no source). */
    private static final int AN_HOUR_BEFORE = 60;

    private final SeasonPlan season;

    private SeasonCalendar(SeasonPlan season) {
        this.season = season;
    }

    /** @param changed when what it is made of was last changed; null where that is not known */
    public static Calendar of(SeasonPlan season, Instant changed) {
        return new SeasonCalendar(season).calendar(changed);
    }

    private Calendar calendar(Instant changed) {
        List<Calendar.Entry> out = new ArrayList<>();
        SeasonWeeks weeks = SeasonWeeks.of(season);
        for (Week week : weeks.weeks()) {
            for (Entry each : week.entries()) {
                out.add(entry(week, each));
            }
        }
        LocalDate first = weeks.weeks().isEmpty() ? LocalDate.EPOCH : weeks.weeks().get(0).monday();
        RichText name = season.name().isEmpty() ? RichText.of("Season") : RichText.ofQuoted(season.name());
        return new Calendar(name, first, null, changed, out);
    }

    private Calendar.Entry entry(Week week, Entry entry) {
        List<RichText> lines = new ArrayList<>();
        SeasonWeekPhrases.lines(entry).forEach(each -> lines.add(RichText.ofQuoted(each)));
        RichText title = RichText.ofQuoted(entry.rider() + ": " + SeasonWeekPhrases.title(entry));
        return switch (entry.kind()) {
            case SERVICE -> service(week, entry, title, lines);
            case OUT, HOME -> Calendar.Entry.ofDays(identity(entry, entry.ride().event()), title, lines, entry.date(), entry.date().plusDays(1));
            case WORK -> new Calendar.Entry(identity(entry, entry.purpose().word()), title, lines, entry.begin(), entry.end(), 0);
            case START -> start(entry, title, lines);
        };
    }

    private Calendar.Entry service(Week week, Entry entry, RichText title, List<RichText> lines) {
        List<String> identity = identity(entry, entry.service().what());
        return entry.date() == null ? Calendar.Entry.ofDays(identity, title, lines, week.monday(), week.monday().plusWeeks(1))
                : new Calendar.Entry(identity, title, lines, entry.begin(), entry.end(), 0);
    }

    private Calendar.Entry start(Entry entry, RichText title, List<RichText> lines) {
        PlannedRide ride = entry.ride();
        LocalDateTime start = ride.date().atTime(ride.day().start());
        Double longest = ride.day().longest();
        Duration time = longest == null ? UNKNOWN : Duration.ofMinutes(Math.round(longest / 60));
        lines.addAll(GroundPhrases.attribution(season.attribution()));
        return new Calendar.Entry(identity(entry, ride.event()), title, lines, start, start.plus(time), AN_HOUR_BEFORE);
    }

    /** Season, rider, day and what it is: what is made again replaces what was there. */
    private List<String> identity(Entry entry, String what) {
        return List.of(season.name(), entry.rider(), entry.kind().word(), entry.date() == null ? entry.service().week().toString() : entry.date().toString(), what,
                entry.ride() == null ? "" : entry.ride().event());
    }
}
