// Signs in with the code after the # of the address, or with a typed one. What stands after the # is never sent to a server or written to a log.
const words = document.getElementById('words');

async function enter(code) {
  const answer = await fetch('/office/session', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'X-Field': '1' },
    body: JSON.stringify({ code }),
  });
  if (answer.ok) location.replace('/');
  else words.textContent = (await answer.json()).words;
}

document.getElementById('form').addEventListener('submit', (event) => {
  event.preventDefault();
  enter(document.getElementById('code').value);
});

const code = location.hash.slice(1);
if (code) {
  history.replaceState(null, '', location.pathname);
  enter(code);
}
