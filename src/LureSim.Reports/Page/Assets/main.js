// Starts what the page carries.
const pageData = JSON.parse(document.getElementById('data').textContent);
const pagePlayer = startPlayers(pageData);
if (typeof startControls === 'function') startControls(pageData, pagePlayer);
