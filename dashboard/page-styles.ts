// Of all pages but the wall; fetched with the first of them. The order counts: later rules win.
import './styles/batch.css';
import './styles/form.css';
import './styles/listing.css';
import './styles/trust.css';
import './styles/access.css';
import './styles/bench.css';
import './styles/print.css';
import './styles/ahead.css';
import './styles/report.css';
import './styles/topics.css';
import './styles/trade.css';
import './styles/desk.css';
