// Starts what the page carries. A run that is like another one until it is computed shares its film.
const pageData = JSON.parse(document.getElementById('data').textContent);
pageData.runs = pageData.runs.map(r => (r.like ? { ...pageData.runs.find(o => o.id === r.like), ...r } : r));
const pagePlayer = startPlayers(pageData);
const pageControls = startControls(pageData, pagePlayer, typeof liveSolver === 'function' ? liveSolver() : embeddedSolver());
if (typeof startStudies === 'function') startStudies(document.getElementById('studies'), () => pageControls?.sets() ?? []);
