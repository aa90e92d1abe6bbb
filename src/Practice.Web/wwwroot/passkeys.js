// Lets a form with data-passkey ask the browser for a passkey: the question comes from the server, the answer goes back
// in the form's own field, and the form is then sent as any other.
document.addEventListener("submit", async (event) => {
  const form = event.target;
  const question = form.dataset.passkey;
  const answer = form.querySelector("[data-passkey-answer]");
  if (!question || answer.value) return;
  event.preventDefault();
  const trouble = form.querySelector("[data-passkey-trouble]");
  const tell = (words) => {
    trouble.textContent = words;
    trouble.hidden = !words;
  };
  tell("");
  if (!window.PublicKeyCredential?.parseRequestOptionsFromJSON) {
    tell("This browser has no passkeys.");
    return;
  }
  try {
    const asked = await fetch(question, { method: "POST", body: new FormData(form) });
    if (!asked.ok) throw new Error(asked.status === 429 ? "Too many tries. Wait a minute." : "The server did not answer. Try once more.");
    const options = await asked.json();
    const credential =
      form.dataset.passkeyKind === "create"
        ? await navigator.credentials.create({ publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(options) })
        : await navigator.credentials.get({ publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(options) });
    answer.value = JSON.stringify(credential.toJSON());
    form.requestSubmit();
  } catch (error) {
    tell(
      error.name === "NotAllowedError" ? "It was called off, or took too long. Try once more."
      : error.name === "InvalidStateError" ? "This device has a passkey for you already."
      : error.name === "SecurityError" ? "Passkeys need an address with a name and https."
      : error.message,
    );
  }
});
