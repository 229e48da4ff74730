/** The look: fonts, tokens, base rules and controls. Imported once, by the app. */
import '@fontsource/overpass/latin-400.css';
import '@fontsource/overpass/latin-600.css';
import '@fontsource/overpass/latin-700.css';
import '@fontsource/overpass-mono/latin-400.css';
import '@fontsource/overpass-mono/latin-600.css';
import './tokens.css';
import './base.css';
import './controls.css';
