package courseworthy.wear;

import static courseworthy.wear.ExampleWorkshop.START;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What runs out when: jobs of a plan against a stock, counted by hand. */
class StockPlannerTest {

    private static final String PARTS = "bikes:\n  - {name: b, mass: 9 kg}\nparts:\n"
            + "  - {name: c, kind: chain, on: b, mass: 250 g, hours used: 0 h, intervals: [{job: renew, hours: 35 h}]}\n";

    private static ExampleWorkshop stocked(String stock) {
        return new ExampleWorkshop("stock:\n  - " + stock + "\n" + PARTS).ride(START, 1, "dry").weekly(7, "dry");
    }

    private static List<Purchase> bought(ExampleWorkshop of, int weeks) {
        return of.plan(weeks).purchases();
    }

    /** A chain each 35 h at an hour a day: due after 5, 10 and 15 weeks; the one in stock serves the first, so the second is to be bought. */
    @Test
    void whatRunsOutIsBoughtForTheJobThatLacksIt() {
        ExampleWorkshop shop = stocked("{name: spare chain, kind: chain, quantity: 1, price: 30}");
        List<ServiceWork> chains = shop.plan(16).work().stream().filter(each -> each.part().equals("c")).toList();
        assertThat(chains).hasSize(3);
        Purchase only = bought(shop, 16).stream().filter(each -> each.item().equals("spare chain")).findFirst().orElseThrow();
        assertThat(only.by()).isEqualTo(chains.get(1).evening().date());
        assertThat(only.quantity()).isEqualTo("2");
        assertThat(only.price()).isEqualTo(60);
        assertThat(only.why()).isEqualTo("c: renew");
        assertThat(bought(stocked("{name: spare chain, kind: chain, quantity: 3}"), 16)).noneMatch(each -> each.item().equals("spare chain"));
    }

    /** For another bike only, it does not serve this one. */
    @Test
    void aStockServesWhatItIsFor() {
        assertThat(bought(stocked("{name: spare chain, kind: chain, quantity: 9, for: [c]}"), 16)).noneMatch(each -> each.item().contains("chain"));
        assertThat(bought(stocked("{name: other, kind: tube, quantity: 9}"), 16)).anyMatch(each -> each.item().equals("chain for c") && each.quantity().equals("3"));
    }

    /** Counted before the log: what the log says was used, and what its services took, is gone; counted after, it is not taken again. */
    @Test
    void theLogTakesFromTheStock() {
        String stock = "{name: spare chain, kind: chain, quantity: 3, keep: 2";
        assertThat(bought(stocked(stock + "}"), 1)).noneMatch(each -> each.item().equals("spare chain"));
        Purchase afterUse = bought(stocked(stock + "}").used(START, "spare chain", 2), 1).get(0);
        assertThat(afterUse.by()).isEqualTo(START.plusDays(1));
        assertThat(afterUse.quantity()).isEqualTo("1");
        assertThat(afterUse.why()).isEqualTo("less left than to keep");
        Purchase afterService = bought(stocked(stock + "}").service(START, "c", "renew").service(START.plusDays(1), "c", "renew"), 1).get(0);
        assertThat(afterService.quantity()).isEqualTo("1");
        assertThat(bought(stocked(stock + ", counted: " + START + "}").used(START, "spare chain", 2), 1)).noneMatch(each -> each.item().equals("spare chain"));
    }

    /** Each puncture takes one of the stock of its kind for that bike; the last one puts it on the list for the day after the log, and what was before the count does not count. */
    @Test
    void aPunctureTakesFromTheStock() {
        String tubes = "{name: spare tubes, kind: tube, quantity: 2, price: 6";
        assertThat(bought(stocked(tubes + "}").puncture(START, "tube"), 1)).isEmpty();
        Purchase bought = bought(stocked(tubes + "}").puncture(START, "tube").puncture(START.plusDays(1), "tube").ride(START.plusDays(4), 1, "dry"), 1).get(0);
        assertThat(bought).isEqualTo(new Purchase(START.plusDays(5), "", "spare tubes", "1", 6.0, "none left since " + START.plusDays(1)));
        assertThat(bought(stocked(tubes + ", counted: " + START + "}").puncture(START, "tube").puncture(START.plusDays(1), "tube"), 1)).isEmpty();
        assertThat(bought(stocked(tubes + ", for: [c]}").puncture(START, "tube").puncture(START, "tube"), 1)).isEmpty();
        assertThat(bought(stocked(tubes + "}").puncture(START, "plugs").puncture(START, "plugs"), 1)).isEmpty();
        Purchase kept = bought(stocked(tubes + ", keep: 2}").puncture(START, "tube").puncture(START, "tube"), 1).get(0);
        assertThat(kept.quantity()).isEqualTo("2");
        assertThat(kept.why()).isEqualTo("less left than to keep, none since " + START);
        Purchase jug = bought(stocked("{name: jug, kind: sealant, quantity: 70 ml, keep: 60 ml}").puncture(START, "sealant"), 1).get(0);
        assertThat(jug.quantity()).isEqualTo("20 ml");
    }

    /** A litre costs 26; 60 ml a wheel are taken each 85 days or so, and 30 ml should always be there. */
    @Test
    void liquidsAreCountedByVolume() {
        String text = "stock:\n  - {name: jug, kind: sealant, quantity: 100 ml, keep: 30 ml, price: 26}\nbikes:\n  - {name: b, mass: 9 kg}\nparts:\n"
                + "  - {name: w, kind: wheel, on: b, end: rear, mass: 1 kg}\n  - {name: s, kind: sealant, on: w, mass: 60 g, added: " + START + "}\n";
        ExampleWorkshop shop = new ExampleWorkshop(text).ride(START, 1, "dry").weekly(3, "dry");
        assertThat(bought(shop, 14)).noneMatch(each -> each.item().equals("jug"));
        Purchase jug = bought(shop, 27).stream().filter(each -> each.item().equals("jug")).findFirst().orElseThrow();
        assertThat(jug.quantity()).isEqualTo("50 ml");
        assertThat(jug.price()).isEqualTo(1.3, org.assertj.core.api.Assertions.within(0.001));
        assertThat(jug.by()).isBetween(LocalDate.of(2026, 8, 10), LocalDate.of(2026, 8, 24));
    }

    /** Nobody who writes no stock wants a shopping list. */
    @Test
    void withoutAStockNothingIsBought() {
        assertThat(bought(new ExampleWorkshop(PARTS).ride(START, 1, "dry").weekly(7, "dry"), 16)).isEmpty();
    }
}
