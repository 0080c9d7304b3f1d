package counterbench.oracle;

/** The packs of the invented garage: four campaigns of different kinds, one with two revisions. */
final class GaragePacks {

    private GaragePacks() {}

    /** Single maps, `when`, `replaces`, sealant in mL, several fasteners, rise-from, waits. */
    static String liftPump(String revision, String from, int washers, int drainMinutes) {
        return """
        campaign: HX-26-031
        title: Lift pump and banjo bolt
        revision: %s
        in-force-from: %s
        attributes: {transmission: [automatic, manual], axle: [front, rear]}
        kit:
          part: HX-3100-K
          contents:
            - {part: HX-3101, name: Lift pump, quantity: 1, matched: true}
            - {part: HX-3102, name: Metered banjo bolt, quantity: 1, matched: true, single-use: true, replaces: [HX-3092]}
            - {part: HX-3103, name: Seal washer 12 mm, quantity: %d, single-use: true, value: 1.20}
            - {part: HX-3104, name: "Seal washer, automatic", quantity: 2, single-use: true, when: {transmission: automatic}}
            - {part: HX-3105, name: Flange sealant, quantity: 3.5 mL, at-least: 3 mL, shelf-life: true}
            - {part: HX-3106, name: Orifice plug, quantity: 4, on: core}
        cautions:
          - Fuel under pressure can pierce skin. Wear goggles.
        procedure:
          - {id: safe, do: "Read the cautions aloud", kind: safety}
          - {id: cold, do: "Engine cold to the touch", kind: sign, after: [safe]}
          - {id: clamp, do: "Tighten the bracket bolts", kind: torque, after: [cold], fasteners: 4, torque: 41 N·m, also: 30 lbf·ft, within: 10 %%}
          - {id: purge, do: "Purge until no air shows", kind: wait, after: [clamp], minutes: 0.5}
          - {id: banjo, do: "Tighten the banjo bolt", kind: torque, after: [purge], fasteners: 1, torque: 27 N·m, within: 3 N·m}
          - {id: idle, do: "Low idle, warm", kind: reading, after: [banjo], unit: rpm, low: 610, high: 670}
          - {id: closed, do: "Sensor, lever closed", kind: reading, after: [idle], unit: V, low: 0.55, high: 0.75, when: {transmission: automatic}}
          - {id: open, do: "Sensor, lever open", kind: reading, after: [closed], unit: V, rise-from: closed, low: 2.8, when: {transmission: automatic}}
          - {id: linkage, do: "Linkage moves freely", kind: sign, after: [banjo, clamp], when: {transmission: manual, axle: rear}}
        core:
          part: HX-3101
          drain-minutes: %d
          plugs: 4
          packaging: replacement
          return-within-days: 30
          charge: 480.00
        claim:
          labour-operation: 14-0260
          hours: 2.6
          parts-allowance: 30 %%
          submit-within-days: 60
          needs: core-shipped
        """
                .formatted(revision, from, washers, drainMinutes);
    }

    /** Two kit variants by attribute, two cores a job, sealant in grams, readings in kPa and °C. */
    static String rails() {
        return """
        campaign: HX-26-044
        title: Twin fuel rails
        revision: A
        in-force-from: 2026-01-05
        attributes: {engine: [six, eight]}
        kit:
          - part: HX-4410-K6
            when: {engine: six}
            contents:
              - {part: HX-4401, name: "Rail, left", quantity: 1, matched: true}
              - {part: HX-4402, name: "Rail, right", quantity: 1, matched: true}
              - {part: HX-4403, name: Rail washer, quantity: 6, single-use: true}
              - {part: HX-4405, name: Thread sealant, quantity: 12 g, at-least: 10 g, shelf-life: true}
              - {part: HX-4406, name: Rail plug, quantity: 5, on: core}
          - part: HX-4410-K8
            when: {engine: eight}
            contents:
              - {part: HX-4401, name: "Rail, left", quantity: 1, matched: true}
              - {part: HX-4402, name: "Rail, right", quantity: 1, matched: true}
              - {part: HX-4403, name: Rail washer, quantity: 8, single-use: true}
              - {part: HX-4405, name: Thread sealant, quantity: 12 g, at-least: 10 g, shelf-life: true}
              - {part: HX-4406, name: Rail plug, quantity: 5, on: core}
        cautions:
          - Let the rail pressure fall before a joint is opened.
        procedure:
          - {id: safe, do: "Read the cautions aloud", kind: safety}
          - {id: bleed, do: "Let the pressure fall", kind: wait, after: [safe], minutes: 2}
          - {id: rails, do: "Tighten the rail bolts", kind: torque, after: [bleed], fasteners: 6, torque: 24 N·m, also: 18 lbf·ft, within: 2 N·m}
          - {id: pressure, do: "Pressure at idle", kind: reading, after: [rails], unit: kPa, low: 350, high: 420}
          - {id: warm, do: "Coolant, warm", kind: reading, after: [rails], unit: °C, low: 60, high: 95}
          - {id: balance, do: "Balance pipe seated", kind: sign, after: [pressure, warm], when: {engine: eight}}
        core:
          - {part: HX-4401, drain-minutes: 10, plugs: 2, packaging: replacement, return-within-days: 21, charge: 310.00}
          - {part: HX-4402, drain-minutes: 20, plugs: 2, packaging: crate, return-within-days: 21, charge: 310.00}
        claim:
          labour-operation: 14-0440
          hours: 4.2
          parts-allowance: 25 %
          submit-within-days: 75
          needs: core-acknowledged
        """;
    }

    /** No vehicle list, no condition, no core, no check digit, torque in lbf·in. */
    static String valve() {
        return """
        campaign: HX-26-052
        title: Coolant valve
        revision: A
        in-force-from: 2026-01-05
        vin-check-digit: false
        kit:
          part: HV-3300-K
          contents:
            - {part: HV-3301, name: Coolant valve, quantity: 1}
            - {part: HV-3302, name: Valve gasket, quantity: 2, single-use: true}
            - {part: HV-3303, name: Hose clip, quantity: 4}
        cautions:
          - Hot coolant scalds. Let the engine cool.
        procedure:
          - {id: safe, do: "Read the cautions aloud", kind: safety}
          - {id: bolts, do: "Tighten the valve bolts", kind: torque, after: [safe], fasteners: 3, torque: 72 lbf·in, also: 8 N·m, within: 10 %}
          - {id: hold, do: "Hold the pressure", kind: wait, after: [bolts], minutes: 3}
        claim:
          labour-operation: 14-0520
          hours: 0.8
          parts-allowance: 20 %
          submit-within-days: 60
          needs: none
        """;
    }

    /**
     * Two kits of one part a job, a kit part shared with another campaign, two cores of one part.
     */
    static String twinValve() {
        return """
        campaign: HX-26-060
        title: "Coolant valves, long vehicles"
        revision: A
        in-force-from: 2026-01-05
        attributes: {body: [van, bus]}
        kit:
          - part: HV-3300-K
            quantity: 2
            contents:
              - {part: HV-3301, name: Coolant valve, quantity: 1}
              - {part: HV-3302, name: Valve gasket, quantity: 2, single-use: true}
              - {part: HV-3303, name: Hose clip, quantity: 4}
        cautions:
          - Hot coolant scalds. Let the engine cool.
        procedure:
          - {id: safe, do: "Read the cautions aloud", kind: safety}
          - {id: bolts, do: "Tighten the valve bolts", kind: torque, after: [safe], fasteners: 6, torque: 72 lbf·in, also: 8 N·m, within: 10 %}
          - {id: rear, do: "Rear pipe clear of the floor", kind: sign, after: [bolts], when: {body: bus}}
        core:
          - {part: HV-3391, when: {body: van}, quantity: 2, drain-minutes: 5, plugs: 1, packaging: crate, return-within-days: 45, charge: 60.00}
          - {part: HV-3391, when: {body: bus}, quantity: 2, drain-minutes: 8, plugs: 2, packaging: crate, return-within-days: 40, charge: 75.00}
        claim:
          labour-operation: 14-0600
          hours: 1.5
          parts-allowance: 20 %
          submit-within-days: 60
          needs: core-shipped
        """;
    }
}
