package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.cli.CommandFactory;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.spread.HouseSpread;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The live page in a browser: it computes what Java computes, everything on it moves together, and nothing that is put into it or its
 * address does harm. Skipped in a quick build, which has no page, and where there is no browser, unless the system property
 * {@code browser.required} is true.
 */
@Order(1)
class LivePageTest {

    /** The same arithmetic in the same order; what is left is how the two machines round powers and logarithms. */
    private static final double SAME = 1e-9;

    private static final long MOST_BYTES = 900_000;

    /** A vessel that failed, charged to less than the mains at night. */
    private static final String OWN = """
            supply:
              arrangement: backflow-preventer
              pressure: [{ at: '06:00', pressure: 400 kPa }, { at: '01:00', pressure: 500 kPa }]
              water: 10 degC
            tank: { volume: 200 L, material: steel, working-pressure: 1000 kPa }
            heater: { energy: gas, input: 9 kW, set-point: 60 degC }
            relief: [{ name: safety valve, opens: 700 kPa }]
            vessel: { volume: 18 L, precharge: 400 kPa, condition: waterlogged }
            run: { begins: '20:00', duration: 12 h }
            """;

    @TempDir
    Path folder;

    private static LivePage page;

    private static Browser browser;

    @BeforeAll
    static void start(@TempDir Path profile) throws IOException {
        assertTrue(
                LivePage.bundled().isPresent() || !Boolean.getBoolean("browser.required"),
                "there must be a page: build without -Pquick");
        assumeTrue(LivePage.bundled().isPresent(), "a quick build has no page");
        page = LivePage.bundled().orElseThrow();
        browser = Browser.start(profile);
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void everyScenarioRunsAsInJava() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String name : Catalogue.names()) {
            all.append("<pre class=\"one\" id=\"" + name + "\">" + Html.escaped(Catalogue.text(name)) + "</pre>");
        }
        String found = seen(html("orchard-lodge"), all, """
                for (const one of document.querySelectorAll('.one')) {
                  const { peak, discharged, times } = heatswell.engine.open(one.id, one.textContent).house.summary();
                  note([one.id, peak, discharged, ...times].join(' '));
                }
                for (const id of ['orchard-lodge', 'mill-cottage', 'ferry-cottage']) {
                  const { house } = heatswell.engine.open(id, document.getElementById(id).textContent);
                  const { volume } = house.advised();
                  note('advised ' + id + ' ' + (Number.isNaN(volume) ? 'none' : house.said('VOLUME', volume).replace(/\\s/u, '_')));
                }
                done();
                """);
        Map<String, double[]> script = new TreeMap<>();
        for (String line : found.lines().toList()) {
            String[] words = line.split(" ");
            if (words[0].equals("advised")) {
                assertEquals(recommended(Catalogue.read(words[1])), words[2].replace('_', ' '), words[1]);
                continue;
            }
            script.put(
                    words[0],
                    Arrays.stream(words)
                            .skip(1)
                            .mapToDouble(Double::parseDouble)
                            .toArray());
        }
        assertEquals(Catalogue.names().stream().sorted().toList(), List.copyOf(script.keySet()));
        List<String> different = new ArrayList<>();
        script.forEach((name, values) -> differences(name, values, different));
        assertEquals(List.of(), different);
    }

    private static void differences(String name, double[] script, List<String> different) {
        RunSummary run = Catalogue.read(name).simulation().summary();
        double[] java = new double[2 + run.events().size()];
        java[0] = run.peak().value();
        java[1] = run.totals().relieved();
        for (int i = 2; i < java.length; i++) {
            Event event = run.events().get(i - 2);
            java[i] = event.time();
        }
        if (java.length != script.length) {
            different.add(name + ": " + (script.length - 2) + " events instead of " + (java.length - 2));
            return;
        }
        for (int i = 0; i < java.length; i++) {
            if (!(Math.abs(java[i] - script[i]) <= SAME * Math.abs(java[i]))) {
                different.add(name + ", value " + i + ": " + script[i] + " instead of " + java[i]);
            }
        }
    }

    @Test
    void everythingMovesTogether() throws IOException {
        String found = seen(html("orchard-lodge"), "", """
                const at = id => document.getElementById(id);
                const state = () => [at('headline').textContent, document.querySelector('.curve.pressure').getAttribute('d').length > 50,
                    document.querySelector('.curve.pressure').getAttribute('d')].map(String);
                const steps = [state()];
                const kind = at('set-vessel');
                kind.value = 'sound';
                kind.dispatchEvent(new Event('change'));
                steps.push(state());
                const slider = at('set-vessel.volume').closest('.control').querySelector('[type=range]');
                slider.value = '12';
                slider.dispatchEvent(new Event('input'));
                steps.push(state());
                const grip = document.querySelector('[data-field="vessel.volume"]');
                grip.focus();
                grip.dispatchEvent(new KeyboardEvent('keydown', { key: 'PageUp', bubbles: true }));
                steps.push(state());
                note(new Set(steps.map(step => step[0])).size + ' headlines');
                note(new Set(steps.map(step => step[2])).size + ' traces');
                note(at('set-vessel.volume').value.replace(/\\s/u, ' '));
                note('focus stays: ' + (document.activeElement.dataset.field === 'vessel.volume'));
                at('set-tank.volume').value = '3 bar';
                at('set-tank.volume').dispatchEvent(new Event('change'));
                note(document.querySelector('.control .wrong').textContent);
                heatswell.goTo(3600);
                note(at('clock').textContent.replace(/\\s/u, ' ') + ' ' + at('cursor').value);
                at('numbers').open = true;
                document.querySelector('[data-field="heater.set-point"]').dispatchEvent(new KeyboardEvent('keydown', { key: 'End', bubbles: true }));
                note(at('advice').textContent.includes('scald') || at('advice').textContent.includes('burns'));
                const choose = (field, value) => {
                  at('set-' + field).value = value;
                  at('set-' + field).dispatchEvent(new Event('change'));
                };
                choose('tank.material', 'copper');
                choose('supply.arrangement', 'reducing-valve');
                choose('supply.reducing-valve.bypass-opens', 'open');
                const { tank, supply, vessels } = heatswell.live.described;
                note(tank.material + ' ' + supply.bypass);
                at('fade').click();
                note(at('fade').textContent + ' ' + (heatswell.live.described.vessels[0].precharge < vessels[0].precharge));
                at('fade').click();
                note(at('fade').textContent);
                const svg = at('drawing');
                svg.setPointerCapture = () => {};
                const now = field => [at('set-' + field).value, at('headline').textContent, document.querySelector('.curve.pressure').getAttribute('d'), svg.innerHTML];
                for (const field of ['vessel.volume', 'vessel.precharge', 'supply.reducing-valve.set', 'heater.set-point']) {
                  const grip = document.querySelector(`rect[data-field="${field}"]`);
                  const { x, y, width, height } = grip.getBoundingClientRect();
                  const point = (type, down) => new PointerEvent(type, { bubbles: true, clientX: x + width / 2, clientY: y + height / 2 + down });
                  const before = now(field);
                  grip.dispatchEvent(point('pointerdown', 0));
                  at('headline').style.minHeight = '50em';
                  svg.dispatchEvent(point('pointermove', 0));
                  note(now(field)[0] === before[0]);
                  at('headline').style.minHeight = '';
                  svg.dispatchEvent(point('pointermove', 30));
                  svg.dispatchEvent(point('pointerup', 30));
                  note(field + ' ' + now(field).map((one, i) => one !== before[i]).join());
                }
                const press = field => {
                  const button = document.querySelector(`.switch[data-field="${field}"]`);
                  const words = button.getAttribute('aria-label');
                  button.focus();
                  button.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
                  return words + ', then ' + document.activeElement.getAttribute('aria-label');
                };
                note(press('vessel') + ': ' + heatswell.live.described.vessels[0].condition);
                note(press('supply.reducing-valve.bypass-opens') + ': ' + heatswell.live.described.supply.bypass);
                choose('supply.arrangement', 'check-valve');
                note(press('supply.arrangement') + ': ' + heatswell.live.described.supply.arrangement);
                heatswell.live.open('lodge', heatswell.live.text);
                note(at('advice').textContent.match(/8.min to 20.min/gu).length + ' band told');
                note(heatswell.live.described.tank.height.toFixed(3) + ' m');
                note(at('title').textContent + ': ' + at('tempered').textContent);
                heatswell.live.change(new Map([['vessel.volume', '11 L'], ['vessel.precharge', '3.5 bar']]));
                note(at('title').textContent + '. ' + at('question').textContent.replaceAll(/\\s/gu, ' '));
                note(at('advice').textContent.includes("'heatswell") + ', ' + at('advice').textContent.includes('“Which vessel?” on this page'));
                note(at('tempered').textContent);
                heatswell.live.open('lodge', heatswell.live.text);
                heatswell.goTo(0);
                dispatchEvent(new Event('beforeprint'));
                note('printed at ' + at('clock').textContent.replaceAll(/\\s/gu, ' '));
                const paper = document.createElement('style');
                paper.textContent = [...document.styleSheets].flatMap(sheet => [...sheet.cssRules])
                    .filter(rule => rule.media?.mediaText === 'print').flatMap(rule => [...rule.cssRules]).map(rule => rule.cssText).join('\\n');
                document.body.style.width = '180mm';
                document.head.append(paper);
                const edge = at('advice').getBoundingClientRect();
                const whole = ({ left, right, top, bottom }) => bottom - top > 20 && left >= edge.left - 1 && right <= edge.right + 1 && bottom <= edge.bottom + 1;
                note([...document.querySelectorAll('#advice > .finding')].filter(one => whole(one.getBoundingClientRect()))
                    .map(one => one.textContent.match(/burns an adult|legionella|opened once/u)?.[0]).join());
                note(paper.textContent.length > 500);
                paper.remove();
                dispatchEvent(new Event('afterprint'));
                note('then ' + at('clock').textContent.replaceAll(/\\s/gu, ' '));
                note([...document.querySelectorAll('[role=slider], [role=button], input, select, button')]
                    .filter(one => !(one.labels && one.labels.length) && !one.getAttribute('aria-label') && !one.textContent.trim())
                    .map(one => one.outerHTML).join() + ' without a name');
                done();
                """);
        assertEquals(
                List.of(
                        "4 headlines",
                        "4 traces",
                        "17 L",
                        "focus stays: true",
                        "Tank: 'bar' is a unit of pressure; give a volume in L, mL, m3, gal, qt or pt",
                        "1 h 3600",
                        "true",
                        "copper 20000",
                        "Stop true",
                        "Let the precharge fall",
                        "true",
                        "vessel.volume true,true,true,true",
                        "true",
                        "vessel.precharge true,true,true,true",
                        "true",
                        "supply.reducing-valve.set true,true,true,true",
                        "true",
                        "heater.set-point true,true,true,true",
                        "Shut the isolating valve of the expansion vessel, then Open the isolating valve of the expansion vessel: isolated",
                        "Close the bypass of the reducing valve, then Open the bypass of the reducing valve: undefined",
                        "Take the check valve out, then Fit a check valve: direct",
                        "1 band told",
                        "1.271 m", // 230 L in a cylinder 480 mm wide
                        "Orchard lodge, check valve and relief valve, no vessel: ",
                        "The house as it was changed here. Its file: Orchard lodge, check valve and relief valve, no vessel."
                                + " Changed: Vessel size 11 L; Precharge 3.5 bar.",
                        "false, true",
                        "That is close: “How sure is this?” below counts in how many such houses a relief valve drips.",
                        "printed at 10 min 16 s",
                        "opened once,legionella,burns an adult",
                        "true",
                        "then 0 s",
                        " without a name"),
                found.lines().toList());
    }

    /** The command writes the page; its map, samples and check sheet come from workers and say what Java says of the same house. */
    @Test
    void theCommandWritesAPageThatAnswersLongQuestionsAsInJava() throws IOException {
        Scenario scenario = Catalogue.read("orchard-lodge")
                .with(List.of(new Change("vessel.volume", "12 L"), new Change("vessel.precharge", "2.6 bar")))
                .in(UnitSystem.US);
        Path file = folder.resolve("asked.html");
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        List<String> words = new ArrayList<>(scenario.words()); // as every report names them
        words.add(0, "page");
        words.addAll(List.of("--out", file.toString()));
        int status = CommandFactory.heatswell(writer, writer).execute(words.toArray(String[]::new));
        assertEquals(0, status, out::toString);
        Browser.Outcome outcome = browser.ask(
                file, """
                (async () => {
                  const until = async done => { while (!done()) { await new Promise(r => setTimeout(r, 20)); } };
                  await until(() => window.heatswell);
                  const at = id => document.getElementById(id);
                  at('speed').value = '3600';
                  at('play').click();
                  await until(() => at('play').getAttribute('aria-pressed') === 'false');
                  const pin = heatswell.live.run.events.find(event => event.time > 1);
                  const ran = at('clock').textContent === heatswell.live.said('TIME', pin.time);
                  const [blobs, names] = [[], []];
                  const make = URL.createObjectURL;
                  URL.createObjectURL = blob => { blobs.push(blob); return make.call(URL, blob); };
                  const press = HTMLAnchorElement.prototype.click;
                  HTMLAnchorElement.prototype.click = function () { names.push(this.download); };
                  ['save', 'csv', 'svg', 'png'].forEach(id => at(id).click());
                  await until(() => names.length === 4);
                  [URL.createObjectURL, HTMLAnchorElement.prototype.click] = [make, press];
                  const [file, rows, drawn] = await Promise.all(blobs.slice(0, 3).map(blob => blob.text()));
                  const again = heatswell.engine.open('again', file).house.described().vessels[0].volume === heatswell.live.described.vessels[0].volume;
                  const picture = new DOMParser().parseFromString(drawn, 'image/svg+xml').querySelectorAll('svg text').length > 5;
                  const pixels = new TextDecoder('latin1').decode(await blobs.at(-1).arrayBuffer());
                  const saved = [names.join(), again, rows.slice(0, 41), rows.trim().split('\\n').length - heatswell.live.run.trace.count, picture, pixels.slice(1, 4)].join(' ');
                  const parts = ['map', 'sure', 'check'].map(id => document.getElementById(id));
                  parts.forEach(part => { part.open = true; });
                  const bodies = parts.map(part => part.querySelector('div'));
                  await until(() => bodies.every(body => body.getAttribute('aria-busy') === 'false'));
                  const first = document.querySelector('.readings tbody tr');
                  const typed = first.querySelector('input');
                  const judged = ['0.1', '99', '300', '430 kPa', 'abc', ''].map(words => {
                    typed.value = words;
                    typed.dispatchEvent(new Event('input'));
                    return first.lastChild.textContent.replace(/,.*/, '');
                  });
                  const answered = [document.getElementById('set-vessel.volume').value, heatswell.live.described.name, 'ran to its first pin: ' + ran, saved, bodies[0].querySelector('p').textContent, bodies[1].querySelector('p').textContent,
                      document.querySelectorAll('.band').length + ' band',
                      ...[...document.querySelectorAll('.readings tbody tr')].map(row => [...row.children].slice(1, 3).map(cell => cell.textContent).join(', ')),
                      judged.join()];
                  const meaning = (row, words) => {
                    const input = document.querySelectorAll('.readings input')[row];
                    input.value = words;
                    input.dispatchEvent(new Event('input'));
                    return document.querySelector('#check > div > p[role=status]').textContent.replace(/\\. .*/, '');
                  };
                  answered.push([[4, '100'], [0, '0.1'], [0, ''], [4, '']].map(one => meaning(...one)).join('; '));
                  heatswell.live.open('own', `OWN`);
                  answered.push(at('set-supply.arrangement').selectedOptions[0].textContent,
                      [...document.querySelectorAll('#trace text')].map(one => one.textContent).filter(one => /:00$/.test(one)).join());
                  at('set-supply.pressure.night').value = 'about 450ish or so';
                  at('set-supply.pressure.night').dispatchEvent(new Event('change'));
                  answered.push(heatswell.live.described.supply.timetable.map(one => Math.round(one.pressure)).join());
                  const kept = () => document.querySelector('#sizes .size.enough')?.textContent;
                  await until(() => kept()?.includes('kPa'));
                  answered.push(...[...document.querySelectorAll('#sizes .size')].map(one => one.getAttribute('aria-label').replace(', recommended', '')),
                      document.querySelector('#sizes p').textContent.replace(/.*fit it, /, ''));
                  document.querySelector('#sizes .size.enough').dispatchEvent(new Event('click'));
                  answered.push(heatswell.live.said('GAUGE_PRESSURE', heatswell.live.described.vessels[0].precharge));
                  heatswell.live.open('slow', `LODGE`);
                  heatswell.live.change(new Map([['heater.input', '2.4 kW']]));
                  await until(() => kept()?.includes('bar'));
                  const lasts = () => heatswell.live.house.text().match(/duration: *(.*)/)[1];
                  answered.push(kept(), lasts() + at('advice').textContent.includes('The heat-up is not finished'));
                  at('sizes').scrollIntoView();
                  const ringed = () => [...document.querySelectorAll('#sizes .size')].map(one => one.getAttribute('aria-label')).find(one => one.endsWith(', recommended'));
                  await until(ringed);
                  answered.push(ringed().split(':')[0]);
                  heatswell.live.change(new Map([['heater.input', '11.2 kW']]));
                  answered.push(lasts());
                  at('set-heater.energy').value = 'electric';
                  at('set-heater.energy').dispatchEvent(new Event('change'));
                  answered.push(heatswell.live.described.heater.energy + String(heatswell.live.house.text().match(/recovery-efficiency: *78/)));
                  heatswell.live.change(new Map([['heater.thermostat', 'stuck']]));
                  await until(() => !kept());
                  answered.push(document.querySelector('#sizes p').textContent);
                  return answered.join('\\n').replaceAll(/\\u00a0|\\u202f/gu, ' ');
                })()
                """.replace("LODGE", Catalogue.text("orchard-lodge")).replace("OWN", OWN));
        assertEquals(List.of(), outcome.console());
        List<String> all = outcome.page().lines().toList();
        assertEquals(
                List.of(
                        "3.17 gal",
                        "orchard-lodge",
                        "ran to its first pin: true",
                        "orchard-lodge.yaml,orchard-lodge-trace.csv,orchard-lodge.svg,orchard-lodge.png true"
                                + " time_s,water_mean_K,pressure_absolute_Pa, 1 true PNG"),
                all.subList(0, 4));
        List<String> told = all.subList(4, all.size());
        QuantityFormat format = QuantityFormat.unicode(scenario.units());
        double[] sizes = scenario.costs().vessels().stream()
                .mapToDouble(NominalSize::volume)
                .sorted()
                .toArray();
        PeakMap map = PeakSurvey.builder(scenario.system())
                .volumes(VolumeUnit.CUBIC_METRE, sizes)
                .target(VesselChoice.of(scenario).build().target())
                .build()
                .map();
        assertEquals(plain(Narrative.of(map).headline().text(format)) + ".", told.get(0));
        int dripping = HouseSpread.of(scenario)
                .samples(200)
                .build()
                .answer()
                .dripping()
                .count();
        assertTrue(told.get(1).contains(dripping == 200 ? "all 200 samples" : dripping + " of 200"), told.get(1));
        List<String> expected = new ArrayList<>(List.of("1 band"));
        VariedHouse varied = Check.unread(VariedHouse.of(scenario), scenario);
        Check.of(scenario.system(), varied, Optional.empty(), new Balances.Count(), format)
                .readings()
                .forEach(reading -> expected.add(plain(format.pressure(reading.expectedGauge()) + ", "
                        + format.pressure(reading.lowestGauge()) + " to " + format.pressure(reading.highestGauge()))));
        expected.add("too low,too high,HAZARD: The gauge read 300 psi,agrees,"
                + "'abc' does not start with a number; write a number and a unit,");
        expected.add(
                "The expansion tank takes too little water; The supply comes first, for all the other readings move with it;"
                        + " The expansion tank takes too little water; ");
        expected.addAll(List.of("backflow preventer", "20:00,22:00,00:00,02:00,04:00,06:00,08:00", "450000,400000"));
        expected.addAll(tried(ScenarioReader.read("own", OWN.replace("500 kPa", "450 kPa"))));
        expected.addAll(List.of(
                "so charged. The pressure over time is of the vessel as it is: not at work.",
                "450 kPa",
                smallestWithSlowHeater(),
                "10 hfalse",
                recommended(slowLodge()),
                "4 h",
                "electricnull",
                "No size: cannot size a vessel: thermostat: is stuck; repair it, since no vessel helps against that."));
        assertEquals(expected, told.subList(2, told.size()));
    }

    /** What the command finds for the sizes on sale, of which some would make the relief valve drip: then nobody can read a peak. */
    private static List<String> tried(Scenario house) {
        double air = house.system().site().atmosphere();
        double opens = Limit.reliefSetGauge(house.system()).orElseThrow();
        QuantityFormat format = QuantityFormat.unicode(house.units());
        List<SizingResult.Vessel> sizes =
                VesselChoice.of(house).build().forColdFill().nominal();
        assertTrue(sizes.stream().anyMatch(size -> size.peakAbsolute() - air > 1.1 * opens), "some are to drip");
        return sizes.stream()
                .map(size -> plain(format.volume(size.volume()) + ": "
                        + (size.peakAbsolute() - air >= opens
                                ? "would drip"
                                : format.pressure(size.peakAbsolute() - air))
                        + (size.suffices() ? ", enough" : ", above the limit")))
                .toList();
    }

    /** A house whose heater is not done when its run of 4 h ends. */
    private static Scenario slowLodge() {
        return Catalogue.read("orchard-lodge").with(List.of(new Change("heater.input", "2.4 kW")));
    }

    /** The size that {@code size} recommends. */
    private static String recommended(Scenario house) {
        return VesselChoice.of(house)
                .build()
                .answer()
                .recommended()
                .map(vessel -> plain(QuantityFormat.unicode(house.units()).volume(vessel.volume())))
                .orElse("none");
    }

    /** What {@code size} finds for the lodge with a heater that is not done when its run of 4 h ends. */
    private static String smallestWithSlowHeater() {
        Scenario slow = slowLodge();
        SizingTarget target = VesselChoice.of(slow).build().target();
        SizingResult.Vessel smallest = VesselSizing.builder(slow.system(), target)
                .vesselLike(
                        Catalogue.read("orchard-lodge-vessel").system().vessel().orElseThrow())
                .precharge(VesselSizing.Precharge.STATIC)
                .sizes(slow.costs().vessels())
                .build()
                .size()
                .smallestOnSale()
                .orElseThrow();
        QuantityFormat format = QuantityFormat.unicode(slow.units());
        double peak = smallest.peakAbsolute() - slow.system().site().atmosphere();
        return plain(format.volume(smallest.volume()) + ": " + format.pressure(peak)) + ", enough";
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    @Test
    void hostileTextsAndAddressesDoNothing() throws IOException {
        String hostile = Catalogue.text("orchard-lodge")
                .replaceFirst(
                        "title: .*", "title: \"</pre></script><script>document.title='harmed'</script><img src=x>\"");
        String found = seen(html(page, ScenarioReader.read("hostile", hostile)), "", """
                note(document.title.startsWith('Heatswell: </pre>'));
                note(document.images.length + ' images');
                const trouble = document.getElementById('trouble');
                const told = address => {
                  location.hash = address;
                  dispatchEvent(new HashChangeEvent('hashchange'));
                  return trouble.hidden ? 'nothing' : trouble.textContent;
                };
                note(told('#tank.volume=150%20L'));
                note(document.getElementById('set-tank.volume').value.replace(/\\s/u, ' '));
                note(told('#tank.volume=%3Cimg%20src%3Dx%3E'));
                note(told('#file=tank%3A%20%7B%20volumee%3A%203%20%7D').split('\\n').at(-1));
                note(told('#a=%E0%A4%A'));
                note(document.images.length + ' images');
                done();
                """);
        assertEquals(
                List.of(
                        "true",
                        "0 images",
                        "nothing",
                        "150 L",
                        "tank.volume: '<img src=x>' does not start with a number; write a number and a unit",
                        "Line 1, column 9: tank.volumee: is not a known key here; did you mean volume?",
                        "The address of this page carries settings that cannot be read.",
                        "0 images"),
                found.lines().toList());
    }

    /** What the drawing cannot show where it is, or at all, is told below it; and no words in it lie over others or beyond its edge. */
    @Test
    void fitsEveryWidthIsSmallAndTellsWhatItDoesNotDraw() throws IOException {
        String html = html("mill-cottage-small-vessel");
        assertTrue(html.getBytes(StandardCharsets.UTF_8).length < MOST_BYTES, "the file must be below 0.9 MB");
        Files.writeString(folder.resolve("live.html"), html);
        String several = """
                tank: { volume: 210 L, material: steel, working-pressure: 10 bar }
                supply: { arrangement: check-valve, pressure: 3.8 bar, water: 8 degC }
                heater: { energy: electric, input: 3 kW, set-point: 62 degC }
                relief:
                  - { name: T&P valve, opens: 7 bar, opens-at: 95 degC, height: 1.3 m }
                  - { name: low valve, opens: 6 bar, kind: expansion-valve, height: -4 m }
                vessel: { name: lower, volume: 8 L, precharge: 3.8 bar, height: -6 m }
                vessels:
                  - { name: upper, volume: 12 L, precharge: 3 bar, height: 12 m }
                  - { volume: 5 L, precharge: 3.5 bar, location: in-tank }
                gauge: { height: 2 m }
                run: { duration: 2 h, sample: 1 min }
                """;
        String found = seen(
                "<!DOCTYPE html><html><body><iframe src=\"live.html\" style=\"border:0;height:800px;width:1200px\"></iframe></body></html>",
                "<pre id=\"several\">" + Html.escaped(several) + "</pre>",
                """
                const frame = document.querySelector('iframe');
                const page = frame.contentDocument;
                const root = page.documentElement;
                const over = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > a.height / 4;
                const outside = (a, b) => a.left < b.left - 1 || a.right > b.right + 1 || a.top < b.top - 1 || a.bottom > b.bottom + 1;
                const look = () => {
                  note(frame.clientWidth + ': ' + (root.scrollWidth <= root.clientWidth ? 'fits' : root.scrollWidth) + ', '
                      + frame.contentWindow.performance.getEntriesByType('resource').length + ' asked for');
                  const edge = page.getElementById('drawing').getBoundingClientRect();
                  const words = [...page.querySelectorAll('#drawing text')].filter(one => one.textContent).map(one => [one.textContent, one.getBoundingClientRect()]);
                  note(words.flatMap(([one, a], i) => [...(outside(a, edge) ? [one + ' is cut'] : []),
                      ...words.slice(0, i).filter(([, b]) => over(a, b)).map(([other]) => one + ' lies over ' + other)]).join());
                };
                const { live } = frame.contentWindow.heatswell;
                for (const width of [1200, 320]) {
                  frame.style.width = width + 'px';
                  live.open('mill', live.text);
                  look();
                }
                note(live.open('several', document.getElementById('several').textContent).map(fault => fault.message).join());
                look();
                note(page.getElementById('notes').textContent.replaceAll('. ', '.\\n').replaceAll(/[\\u00a0\\u202f]/gu, ' '));
                note(page.querySelector('[for="set-vessel.volume"]').textContent);
                live.change(new Map([['relief[1].opens', '4.5 bar']]));
                frame.contentWindow.heatswell.goTo(live.run.trace.end);
                note(live.run.discharged > 0);
                note([...page.querySelectorAll('#drawing .value.halo')].map(one => one.textContent === live.said('VOLUME', live.run.discharged) ? 'all of it' : one.textContent.replaceAll(/[\\u00a0\\u202f]/gu, ' ')).join());
                done();
                """,
                "document.querySelector('iframe').contentWindow.heatswell");
        assertEquals(
                List.of(
                        "1200: fits, 0 asked for",
                        "",
                        "320: fits, 0 asked for",
                        "",
                        "",
                        "320: fits, 0 asked for",
                        "",
                        "Not drawn, but simulated: the expansion vessel “upper” (12 L, 12 m above the drain cock); the expansion vessel (5 L, in the tank).",
                        "Not at its height in the drawing, on a broken pipe: the relief valve “low valve” (4 m below the drain cock); the expansion vessel “lower” (6 m below the drain cock).",
                        "In the tank, the closer the stripes the hotter the water.",
                        "Vessel size (“lower”)",
                        "true",
                        "all of it,0 L"),
                found.lines().toList());
    }

    private static String html(String name) throws IOException {
        return html(page, Catalogue.read(name));
    }

    private static String html(LivePage page, Scenario house) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        page.of("page.html", house).writeTo(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private String seen(String html, CharSequence more, String script) throws IOException {
        return seen(html, more, script, "window.heatswell");
    }

    /** What a script notes about a page that has started; loading ends when it is done, and the console has nothing to say. */
    private String seen(String html, CharSequence more, String script, String started) throws IOException {
        String looking = more + "<pre id=\"seen\"></pre><script>"
                + "{ const note = words => { document.getElementById('seen').textContent += words + '\\n'; };"
                + "const done = () => { document.getElementById('seen').dataset.done = 'yes'; };"
                + "const look = () => { if (" + started + ") {\n" + script + "\n} else { setTimeout(look, 1); } };"
                + "look(); }</script></body>";
        Path file = folder.resolve("looked-at.html");
        Files.writeString(file, html.replace("</body>", looking));
        Browser.Outcome outcome = browser.load(file);
        assertEquals(List.of(), outcome.console());
        Matcher seen = Pattern.compile("<pre id=\"seen\" data-done=\"yes\">(.*?)</pre>", Pattern.DOTALL)
                .matcher(outcome.page());
        assertTrue(
                seen.find(),
                () -> "it did not start or end: " + outcome.page().replaceAll("(?s).*(<pre id=\"seen\".*)", "$1"));
        return seen.group(1)
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&nbsp;", " ")
                .replace("&amp;", "&");
    }
}
