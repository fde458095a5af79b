/** Wörter der Ansicht. */
export default {
    "scene.label": "Der Fahrantrieb dreidimensional",
    "scene.keys": "Pfeiltasten drehen die Ansicht, mit Umschalttaste verschieben sie, Plus und Minus vergrößern und verkleinern, Bild ab und Bild auf gehen von Teil zu Teil, Escape lässt los, Pos1 bringt die erste Ansicht zurück.",
    "scene.wait": "Der Antrieb wird gezeichnet …",
    "scene.none": "Dieser Browser kann nicht dreidimensional zeichnen (kein WebGL 2). Alles andere geht: Schaltplan, Kurven und Worte sagen dasselbe.",
    "scene.lost": "Die Grafik dieses Geräts hat kurz ausgesetzt; das Bild kommt von selbst wieder.",
    "scene.this": "Der Antrieb",
    "scene.sound": "Derselbe, gesund",
    "scene.notes": "Wie gezeichnet ist",
    "scene.fast": "Zu schnell für das Auge: langsamer stellen. Als Schleier gezeichnet.",
    "scene.gaps": "Größer gezeichnet, als sie sind: Ölfilme ×{0}, Kolbenspiel ×{1}.",
    "scene.trouble": "Die Rechnung blieb stehen.",
    "scene.arm": "Stellhebel",
    "scene.sign.return": "Rückstellfeder: bringt die Scheibe mit {0} % der Geschwindigkeit zurück; ihr Draht ist dünner gezeichnet.",
    "scene.sign.returnBroken": "Rückstellfeder gebrochen: Nichts bringt die Schrägscheibe zurück.",
    "scene.sign.tight": "Differential schwergängig: {0} Widerstand, jetzt {1} Wärme; mit ihr röten sich die Lager.",
    "scene.sign.thin": "Öl mit {0} % der Zähigkeit: Bei gleichem Druck lecken enge Spalte ×{1}. Ringe zeigen, wo es jetzt leckt.",
};
