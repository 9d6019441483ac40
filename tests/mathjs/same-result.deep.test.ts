import './same-result.test.js';
