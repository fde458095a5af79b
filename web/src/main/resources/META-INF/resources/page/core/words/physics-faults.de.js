/** Alle Fehler, die der Antrieb haben kann, und worin ihre Schwere gemessen wird. Fachbegriffe nach Brauch des Gewerbes, ohne Quelle. */

const CLEARANCE = "zusätzliches radiales Spiel";
const GAP = "zusätzlicher Spalt an der Fläche";
const SCORE = "Tiefe einer 3 mm breiten Riefe";
const AREA = "Fläche";
const SEAT = "Leckfläche des Sitzes";
const LIFT = "Anteil des vollen Hubs";
const LOST_LIFT = "verlorener Anteil des Hubs";
const ORIFICE = "Durchmesser der Bohrung";
const OPEN = "Anteil, der offen bleibt";
const LEFT_ANGLE = "Schwenkwinkel, der in Neutral bleibt";
const FRICTION = "Reibwert";
const WITHOUT_SPRING = "Kolben ohne Feder";
const STUCK = "feste Kolben";
const ONE_CLEARANCE = "radiales Spiel dieses Kolbens";
const DRAG = "zusätzliches Schleppmoment an der Achse";
const JOINED = "verbunden (0: nicht)";

/** @type {Record<string, [string, string]>} Fehler und seine Schwere */
const faults = {
    "pump-bores-worn": ["Kolben und Bohrungen der Pumpe verschlissen", CLEARANCE],
    "pump-bad-piston": ["Ein Kolben oder eine Bohrung der Pumpe riefig", ONE_CLEARANCE],
    "pump-spring-broken": ["Kolbenfeder der Pumpe gebrochen: Der Kolben folgt nicht mehr", WITHOUT_SPRING],
    "pump-piston-sticks": ["Kolben sitzt in der Pumpentrommel fest", STUCK],
    "pump-face-worn": ["Laufflächen auf der Pumpenseite verschlissen oder uneben, Trommel oder Mittelstück", GAP],
    "pump-face-scored": ["Laufflächen auf der Pumpenseite von den Nieren zum Gehäuse riefig", SCORE],
    "pump-bridge-scored": ["Riefe über den Steg zwischen den Nieren, Pumpenseite", SCORE],
    "motor-bores-worn": ["Kolben und Bohrungen des Hydromotors verschlissen", CLEARANCE],
    "motor-bad-piston": ["Ein Kolben oder eine Bohrung des Hydromotors riefig", ONE_CLEARANCE],
    "motor-spring-broken": ["Kolbenfeder des Hydromotors gebrochen: Der Kolben folgt nicht mehr", WITHOUT_SPRING],
    "motor-piston-sticks": ["Kolben sitzt in der Motortrommel fest", STUCK],
    "motor-face-worn": ["Laufflächen auf der Motorseite verschlissen oder uneben, Trommel oder Mittelstück", GAP],
    "motor-face-scored": ["Laufflächen auf der Motorseite von den Nieren zum Gehäuse riefig", SCORE],
    "motor-bridge-scored": ["Riefe über den Steg zwischen den Nieren, Motorseite", SCORE],
    "crack-a": ["Riss oder Poren von der Seite A ins Gehäuse", AREA],
    "crack-b": ["Riss oder Poren von der Seite B ins Gehäuse", AREA],
    "crack-ab": ["Riss zwischen den Seiten A und B", AREA],
    "filter-blocked": ["Saugfilter verstopft", "Widerstand, Vielfaches des sauberen Filters"],
    "air-leak": ["Luft wird auf der Saugseite angesaugt", "Volumenanteil Luft"],
    "oil-low": ["Ölstand zu niedrig", "Anteil des Filters, der frei liegt"],
    "check-a-leaks": ["Nachsaugventil der Seite A leckt zurück", SEAT],
    "check-a-stuck-open": ["Nachsaugventil der Seite A hängt offen", LIFT],
    "check-a-stuck-shut": ["Nachsaugventil der Seite A hängt zu oder ist verstopft", LOST_LIFT],
    "bleed-a-wrong": ["Falsche Drosselbohrung auf der Seite A, zu weit", ORIFICE],
    "check-b-leaks": ["Nachsaugventil der Seite B leckt zurück", SEAT],
    "check-b-stuck-open": ["Nachsaugventil der Seite B hängt offen", LIFT],
    "check-b-stuck-shut": ["Nachsaugventil der Seite B hängt zu oder ist verstopft", LOST_LIFT],
    "bleed-b-wrong": ["Falsche Drosselbohrung auf der Seite B, zu weit", ORIFICE],
    "bypass-not-closed": ["Bypass schließt nicht ganz", OPEN],
    "bypass-left-open": ["Bypass offen gelassen", OPEN],
    "bypass-stuck": ["Bypass lässt sich nicht öffnen", "verlorener Anteil der Öffnung"],
    "linkage-play": ["Spiel in Gestänge, Hebel oder Schwenkzapfen", "verlorener Schwenkwinkel in jeder Richtung"],
    "forward-travel-short": ["Gestänge erreicht vorwärts nicht den vollen Weg", "verlorener Anteil des Wegs vorwärts"],
    "reverse-travel-short": ["Gestänge erreicht rückwärts nicht den vollen Weg", "verlorener Anteil des Wegs rückwärts"],
    "neutral-forward": ["Neutral nach vorwärts verstellt", LEFT_ANGLE],
    "neutral-reverse": ["Neutral nach rückwärts verstellt", LEFT_ANGLE],
    "return-weak": ["Rückstellung nach Neutral schwach", "verlorener Anteil der Rückstellgeschwindigkeit"],
    "pump-thrust-worn": ["Axiallager oder Lauffläche der Schrägscheibe der Pumpe geht kaputt", FRICTION],
    "motor-thrust-worn": ["Axiallager oder feste Schrägscheibe des Hydromotors geht kaputt", FRICTION],
    "oil-too-thin": ["Öl von zu dünner Sorte", "Anteil der Viskosität"],
    "oil-degraded": ["Öl verbraucht: geschert oder verdünnt", "verlorener Anteil der Viskosität"],
    "oil-wet": ["Wasser im Öl", "Volumenanteil Wasser"],
    "oil-aerated": ["Luft im Öl, nicht entlüftet", "Volumenanteil freier Luft"],
    "oil-overheated": ["Öl heißer als gemessen oder angenommen", "heißer als angenommen um"],
    "belt-worn": ["Riemen verschlissen, verglast oder lose", "verlorener Anteil des Griffs"],
    "engine-slow": ["Verbrennungsmotor zu langsam eingestellt", "verlorener Anteil der Reglerdrehzahl"],
    "engine-weak": ["Verbrennungsmotor schwach", "verlorener Anteil des Drehmoments"],
    "pulley-wrong": ["Falsche Riemenscheibe, Antriebswelle zu langsam", "verlorener Anteil der Übersetzung"],
    "input-key-sheared": ["Passfeder oder Verzahnung der Riemenscheibe abgeschert", JOINED],
    "gears-damaged": ["Zähne beschädigt", "verlorener Anteil des Drehmoments"],
    "axle-key-sheared": ["Radpassfeder, Achswelle oder Differential gebrochen", JOINED],
    "brake-drags": ["Feststellbremse schleift", "Schleppmoment an der Achse"],
    "brake-weak": ["Feststellbremse hält nicht", "verlorener Anteil des Haltemoments"],
    "differential-tight": ["Differential oder Achslager schwergängig", DRAG],
    "tyre-small": ["Falsche oder platte Reifen, zu klein", "verlorener Anteil des Halbmessers"],
    "tyre-grip-poor": ["Reifen ohne Griff", "verlorener Anteil des Griffs"],
    overload: ["Maschine überladen, der Antrieb ist gesund", "Masse, Vielfaches der angegebenen"],
    "duty-steep": ["Hang steiler als angenommen, der Antrieb ist gesund", "steiler als angenommen um"],
    "fan-broken": ["Lüfter gebrochen oder blockiert", "verlorener Anteil der Lüfterwirkung"],
    "fins-packed": ["Kühlrippen mit Schmutz zugesetzt", "zugesetzter Anteil der Fläche"],
};

export default Object.fromEntries(
    Object.entries(faults).flatMap(([key, [name, severity]]) => [[`fault.${key}`, name], [`severity.${key}`, severity]]),
);
